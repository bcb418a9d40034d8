### What npm start tells on the terminal, and pages that only it shows

# $seconds: how long it took, as it is written: 0.4.
serving-followed = Followed in { $seconds } s.
# At the start, where kits have to be worked out first.
serving-waiting = { $count ->
    [one] One kit is
   *[other] { $count } kits are
  } worked out one after the other; what is gone to comes first.
serving-ready = All is worked out.
# On the desk, where a page could not be made by a fault of the program itself.
serving-failed = Something could not be made; the terminal of npm start says what.
serving-old = The program itself has changed. Stop it and start it again: until then nothing is made anew.

## Where a PDF was asked for and could not be printed
serving-unprinted = This PDF could not be printed
serving-unprinted-remedy = Correct what is named, and load this page again.
