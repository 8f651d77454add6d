# A manual by somebody who wants more than to print a checklist.

manual "hostile" {
  title    = "<script>alert(1)</script> ]]> </style></title><img src=x onerror=alert(1)>"
  units    = "metric"
  revision = "</style><script>alert(2)</script>\"; } body { display: none"
  issued   = "2026-01-01"
  supplier = "' onmouseover='alert(3)"
  order    = [procedure.p]

  history "A\"><script>" {
    issued = "2025-01-01"
    reason = "**bold** | cell | [x](javascript:alert(4)) \u202Edesrever"
  }
}

option "o" {
  name    = "# <b>Option</b>"
  choices = ["a|b", "<i>"]
}

places "side" {
  names = ["left\" onclick=\"alert(5)", "<right>"]
}

figure "evil" {
  file = "figures/evil.svg"
  alt  = "\"><script>alert(6)</script>"
}

figure "outside" {
  file = "../press/gap.svg"
  alt  = "Outside"
}

figure "page" {
  file = "figures/page.html"
  alt  = "A page"
}

tool "t" {
  name = "`tool` <script>"
  kind = "depth gauge"

  warning {
    hazard = "</p><script>alert(7)</script>"
    result = "1. not a list"
    avoid  = "# not a heading"
  }
}

part "p" {
  name   = "<a href=javascript:alert(8)>part</a>"
  number = "| --- |"

  size "0.10 mm" {
    in_kit = 2
    mark   = "</td></table><script>"
  }
}

procedure "p" {
  title = "- [ ] <u>title</u>"
  intro = <<-EOT
    <script>alert(9)</script>

    <iframe src="https://example.invalid/"></iframe> and <b onclick="x()">bold</b>

    [link](javascript:alert(10)) [page](https://example.invalid/a?b=c) <https://example.invalid/>
    ![picture](figures/evil.svg) ![far](https://example.invalid/x.png) ![up](../press/gap.svg)
    ![etc](/etc/passwd)

        code <script>alert(11)</script>

    ```html
    <script>alert(12)</script>
    ```

    > quote <script>

    1. one
    2. two `</code><script>`

    &lt;script&gt;alert(13)&lt;/script&gt; &#60;b&#62;

    Heading <script>
    ================

    ***

    | a | b |
    |---|---|
    | ____ | _ |
  EOT

  measure "m" {
    title     = "<h1>measure</h1> ${place}"
    on        = [part.p]
    tools     = [tool.t]
    likely    = "0.1..0.3 mm"
    at_each   = places.side
    figures   = [figure.evil, figure.outside, figure.page]
    text      = "${measure.m} </p><style>*{display:none}</style> *${measure.m}* (____) (____)"
    otherwise = "<meta http-equiv=refresh content=0>"
  }
}
