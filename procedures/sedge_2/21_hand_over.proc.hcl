procedure "hand_over" {
  title = "Prove the engine and sign it over"
  after = [procedure.settle]

  inspect "ready" {
    title     = "Walk round the engine together once more"
    on        = [part.crankcase, part.fuel_hose, part.flywheel]
    tools     = [tool.extinguisher]
    people    = 2
    takes     = "5 min"
    criterion = "No tool on the engine, oil at the upper line, fuel line dry. Frame out of doors, extinguisher at arm's length."
    otherwise = "Put it right, and walk round again."
  }

  hold "proof" {
    title   = "Stop before the proof run"
    checks  = [inspect.ready]
    before  = run.proof
    release = "second person"
    takes   = "1 min"
  }

  run "proof" {
    title     = "Run the engine for half an hour"
    on        = [part.crankcase]
    by        = "power"
    ppe       = [ppe.goggles, ppe.ear_protection]
    tools     = [tool.extinguisher]
    people    = 2
    takes     = "35 min"
    criterion = "The oil gauge rises within 5 s and stays in its green field. No drip under the frame, no blue smoke, no knock."
    otherwise = "Stop the engine, close the fuel tap, and open the isolating switch. Find the cause before another start."
    text      = "Idle for ten minutes, then move the throttle slowly between idle and half speed."

    danger {
      hazard = "Exhaust gas holds carbon monoxide, which nobody can smell."
      result = "Death within minutes in a closed room."
      avoid  = "Run the engine out of doors only, with the exhaust blowing away from you and from open windows."
    }

    warning {
      hazard = "Flywheel, coupling and pump turn without a guard; the exhaust glows."
      result = "Caught sleeves, broken arms, burns."
      avoid  = "Tie hair and sleeves back. Stay in front of the timing cover, and touch nothing but switch and throttle."
    }
  }

  clean "pad" {
    title    = "Degrease the serial pad"
    on       = [part.crankcase.face.serial_pad]
    supplies = [supply.solvent, supply.rags]
    takes    = "2 min"
  }

  inspect "record" {
    title     = "Read the build record from end to end"
    on        = [part.crankcase]
    takes     = "20 min"
    criterion = "Every reading is filled in and inside its limit, and every hold carries its initials."
    otherwise = "Take the missing reading now. A number from memory is no reading."
  }

  hold "record" {
    title   = "Stop until Withybrook has the record"
    checks  = [run.proof, inspect.record]
    before  = fit.data_plate
    release = "supplier"
    takes   = "15 min"
    text    = "Send the logbook file. Withybrook answers with the number for the data plate."
  }

  hold "installation" {
    title   = "Stop until the inspector has seen engine and record"
    checks  = [inspect.record]
    before  = fit.data_plate
    release = "inspector"
    takes   = "30 min"
    why     = "This manual ends on the frame. Whether the engine may go into your boat is for local rules and a licensed inspector to say."
  }

  fit "data_plate" {
    title        = "Press the data plate onto the serial pad"
    part         = part.data_plate
    takes        = "2 min"
    irreversible = true
  }
}
