package render

// Procedure is a procedure at one place, or at none.
type Procedure struct {
	Ref
	Intro      []Block   `json:"intro,omitempty"`
	Conditions *Amount   `json:"conditions,omitempty"` // temperature
	After      []Ref     `json:"after,omitempty"`
	When       string    `json:"when,omitempty"`  // a reading decides whether it is done
	Left       string    `json:"left,omitempty"`  // why it is not for this build; then it has no steps
	Tools      []Item    `json:"tools,omitempty"` // all that its steps use
	Supplies   []Item    `json:"supplies,omitempty"`
	Protection []Item    `json:"protection,omitempty"`
	Groups     []Group   `json:"groups,omitempty"`
	Examples   []Example `json:"examples,omitempty"`
}

// Group is a run of steps that are done together at one place, or at none.
type Group struct {
	Place string `json:"place,omitempty"`
	Steps []Step `json:"steps"`
}

// Step is one step as it is printed. What does not apply is empty.
type Step struct {
	Ref
	Kind       string      `json:"kind"`
	Heading    Line        `json:"heading"`
	When       string      `json:"when,omitempty"` // a reading decides whether it is done
	Left       string      `json:"left,omitempty"` // why it is not for this build; then it has nothing else
	Critical   bool        `json:"critical,omitempty"`
	Final      bool        `json:"final,omitempty"` // cannot be undone
	Messages   []Message   `json:"messages,omitempty"`
	Tools      []Item      `json:"tools,omitempty"`
	Supplies   []Item      `json:"supplies,omitempty"`
	Protection []Item      `json:"protection,omitempty"`
	People     int         `json:"people"`
	Takes      *Amount     `json:"takes,omitempty"`
	Visits     []string    `json:"visits,omitempty"` // places to tick off, in working order
	Facts      []Fact      `json:"facts,omitempty"`
	Text       []Block     `json:"text,omitempty"`
	Settings   []Setting   `json:"settings,omitempty"`
	Pattern    *Pattern    `json:"pattern,omitempty"`
	Readings   []Reading   `json:"readings,omitempty"` // one for each place
	Computed   []Computed  `json:"computed,omitempty"`
	Pick       *Pick       `json:"pick,omitempty"`
	Hold       *Hold       `json:"hold,omitempty"`
	Otherwise  []Otherwise `json:"otherwise,omitempty"`
	Why        []Block     `json:"why,omitempty"`
	Figures    []Figure    `json:"figures,omitempty"`
	Record     bool        `json:"record,omitempty"` // goes into the build record
}

// Message is a safety message, with a signal word of ANSI Z535.6.
type Message struct {
	Word   string `json:"word"`            // "danger", "warning", "caution" or "notice"
	From   string `json:"from,omitempty"`  // the tool, supply or part it comes from; "" for the step itself
	Short  bool   `json:"short,omitempty"` // it stands in full earlier in the document
	Hazard Line   `json:"hazard,omitempty"`
	Result Line   `json:"result,omitempty"`
	Avoid  Line   `json:"avoid,omitempty"`
}

// Fact is a labelled line: which part, which way round, by which mark.
type Fact struct {
	Label string `json:"label"`
	Value Line   `json:"value"`
}

// Setting is a number to set or to reach.
type Setting struct {
	Label   string   `json:"label"`
	Amount  Amount   `json:"amount"`            // a value or a range; nothing as long as it is not known
	Allowed *Amount  `json:"allowed,omitempty"` // limits around a value
	Stages  []Amount `json:"stages,omitempty"`  // the values on the way, the last being Amount
	Formula string   `json:"formula,omitempty"` // where it is worked out
	Note    string   `json:"note,omitempty"`
	Aside   bool     `json:"aside,omitempty"` // not to be set itself: what comes of the number before it
	Live    int      `json:"-"`               // of Amount: its place in Live.Says, from 1; 0 for one that does not change
}

// Pattern is the order in which fasteners are tightened.
type Pattern struct {
	Layout string   `json:"layout,omitempty"` // "circle", "row", "grid 2x5"
	Order  []string `json:"order"`            // positions, or the names of places
	Note   string   `json:"note,omitempty"`
}

// Reading is what is read at one place: its boxes, and what counts.
type Reading struct {
	Place   string  `json:"place,omitempty"`
	Key     string  `json:"key"` // of the value in calc
	Boxes   []Box   `json:"boxes"`
	Result  *Box    `json:"result,omitempty"` // of several boxes
	Unit    string  `json:"unit,omitempty"`
	Code    string  `json:"code,omitempty"` // the unit in UCUM
	Likely  *Amount `json:"likely,omitempty"`
	Accept  *Limit  `json:"accept,omitempty"`
	Judge   string  `json:"judge,omitempty"` // a condition that decides, where it is no plain limit
	Agree   *Amount `json:"agree,omitempty"`
	Verdict Verdict `json:"verdict,omitempty"`
}

// Limit is what decides about a value.
type Limit struct {
	Range Amount  `json:"range"`
	Aim   *Amount `json:"aim,omitempty"`   // what to aim at
	Name  string  `json:"name,omitempty"`  // of a named limit
	Basis string  `json:"basis,omitempty"` // the drawing or standard it comes from
}

// Box is one box to fill in.
type Box struct {
	Label string `json:"label"`
	Value string `json:"value,omitempty"` // without its unit
	Key   string `json:"key,omitempty"`   // of the value in calc, where each box counts by itself
}

// Verdict says how a known value stands to its limits.
type Verdict string

// The verdicts. An unknown value has none.
const (
	Unknown Verdict = ""
	Inside  Verdict = "inside"
	Outside Verdict = "outside"
)

// Computed is a value that is worked out.
type Computed struct {
	Place       string  `json:"place,omitempty"`
	Key         string  `json:"key,omitempty"`
	Formula     string  `json:"formula"`     // with names
	Substituted string  `json:"substituted"` // with values; blanks for what is not known
	Result      *Amount `json:"result,omitempty"`
	Unit        string  `json:"unit,omitempty"`
	Accept      *Limit  `json:"accept,omitempty"`
	Judge       string  `json:"judge,omitempty"`
	Verdict     Verdict `json:"verdict,omitempty"`
}

// Pick is a choice of pieces of a graded part.
type Pick struct {
	Key     string   `json:"key"`
	From    Item     `json:"from"`
	Sizes   []Sized  `json:"sizes"`
	Pieces  string   `json:"pieces"` // "2 to 5"
	Start   Computed `json:"start"`  // the gap, or what is built up on
	Fills   bool     `json:"fills"`  // the pack fills a gap; else it builds up
	Limit   *Limit   `json:"limit,omitempty"`
	Total   string   `json:"total,omitempty"`
	Result  string   `json:"result,omitempty"`
	Unit    string   `json:"unit,omitempty"`
	Prefer  string   `json:"prefer"`
	Pack    string   `json:"pack,omitempty"`    // as chosen: "2 × 0.30 mm, 1 × 0.20 mm"
	Problem string   `json:"problem,omitempty"` // why nothing could be chosen
	By      string   `json:"by,omitempty"`      // the reading that Table goes by; "" for Start
	Served  *Served  `json:"-"`                 // which starts the whole kit serves
	Table   []Serve  `json:"table,omitempty"`   // the pack for each likely start, where it can be said beforehand
}

// Served is which of the likely starts the whole kit serves.
type Served struct {
	Range Amount
	Gaps  []Gap // in order
}

// Gap is a stretch of starts for which no pack fits.
type Gap struct {
	Range    Amount
	From, To float64 // as a part of the whole range, for a picture
}

// Sized is a size with the pieces taken of it.
type Sized struct {
	Size
	Take string `json:"take,omitempty"` // "" as long as nothing is chosen
}

// Serve is one row of a table of packs: from where to where, and the pack for it.
// On the line between two rows either pack is good.
type Serve struct {
	Start Amount `json:"start"`          // the gap, or what is built up on
	Pack  string `json:"pack,omitempty"` // "" where no pack fits
	Take  []int  `json:"take,omitempty"` // of each size
	Total string `json:"total,omitempty"`
}

// Hold is a stop.
type Hold struct {
	Checks []Ref  `json:"checks,omitempty"`
	Guards *Ref   `json:"guards,omitempty"` // the step that may not start before
	Signer string `json:"signer"`
}

// Otherwise is what to do when a value is outside.
type Otherwise struct {
	When  string  `json:"when,omitempty"` // "below" or "above"
	Text  []Block `json:"text,omitempty"`
	Steps []Step  `json:"steps,omitempty"`
	Then  string  `json:"then"` // what comes after, in words
	Go    *Ref    `json:"go,omitempty"`
	Stop  bool    `json:"stop,omitempty"`
}

// Figure is a picture, or a film or page elsewhere.
type Figure struct {
	Address string `json:"address"`
	Alt     string `json:"alt,omitempty"`
	File    string `json:"file,omitempty"`    // as the author wrote it
	Type    string `json:"type,omitempty"`    // "image/svg+xml"; "" where there is no picture
	Data    []byte `json:"-"`                 // the picture itself
	Missing string `json:"missing,omitempty"` // why there is none
	Film    string `json:"film,omitempty"`    // where a film or page is found
	Note    string `json:"note,omitempty"`    // its revision, and which prevails
}

// Example is a worked example for the builder.
type Example struct {
	Title string `json:"title"`
	Given []Pair `json:"given"`
	Gives []Pair `json:"gives"`
}

// Pair is a value by its name.
type Pair struct {
	Step  Ref    `json:"step"`
	Name  string `json:"name"` // "total"
	Value string `json:"value"`
}
