### The finder of the catalogue: a reader enters her book's measurements and sees which kits fit.

finder-summary-kits = Find a kit for my book
finder-summary-class = My book’s measurements
finder-lead = Measure the book on your shelf. { $page ->
    [class] Each kit of this class
   *[catalogue] Each kit below
  } is worked out for it. Those that fit come first, and their pages open for your book.
finder-book = My book
finder-units = Numbers without a unit are
finder-millimetres = millimetres
finder-inches = inches
finder-use-saved = Use my saved book
finder-remember = Remember this book
finder-work = The work
finder-hours = Hours, at most
finder-hours-help = An estimate for the whole piece, such as 6 or 2.5.
finder-hours-allowed = a number of hours, 0.25 to 999
finder-levels = Levels
finder-levels-any = any number
finder-light = Light
finder-light-any = with or without
finder-light-with = with a light
finder-light-without = without a light
finder-knife = Knife
finder-knife-any = with or without
finder-knife-without = can be made without
finder-knife-made = made without
finder-knife-help = Without a knife, leaves are folded by their corners; light and window are left out.
# On a card while no book is stated. $hours: a text.
finder-folded = Folded without a knife: about { $hours }.
finder-fit = Fit
finder-fit-any = all kits
finder-fit-change = fits as it is or with a change
finder-fit-own = fits as it is
finder-fit-help = Applies once you enter a measurement.
finder-order = Order
finder-order-best = best first
finder-order-title = title
finder-order-hours = hours
finder-order-fit = fit
finder-start-again = Start again
finder-empty = No kit matches these choices.
finder-clear-choices = Clear the choices, keep my book
finder-show-all = Show all kits

## What the finder answers
finder-saved = This book is saved in this browser. Every kit offers it.
finder-not-saved = This browser cannot save your book.
finder-working = { $count ->
    [one] Working out { $count } kit for your book …
   *[other] Working out { $count } kits for your book …
  }
finder-wrong-field = The marked field cannot be read and is left out.
finder-all-kits = { $count ->
    [one] { $count } kit
   *[other] { $count } kits
  }
# $shown of $count kits.
finder-some-kits = { $count ->
    [one] { $shown } of { $count } kit
   *[other] { $shown } of { $count } kits
  }
finder-kits = { $kits }.
# $verdicts is a list of the phrases that follow.
finder-kits-verdicts = { $kits }: { $verdicts }.
finder-count-own = { $count ->
    [one] { $count } fits your book as it is
   *[other] { $count } fit your book as they are
  }
finder-count-check = { $count ->
    [one] { $count } fits, but has something to check first
   *[other] { $count } fit, but have something to check first
  }
finder-count-change = { $count ->
    [one] { $count } fits with a change
   *[other] { $count } fit with a change
  }
finder-count-poor = { $count ->
    [one] { $count } would come out poorly
   *[other] { $count } would come out poorly
  }
finder-count-no = { $count ->
    [one] { $count } does not fit
   *[other] { $count } do not fit
  }
finder-count-unknown = { $count ->
    [one] { $count } could not be checked
   *[other] { $count } could not be checked
  }
finder-count-waiting = { $count ->
    [one] { $count } was not worked out yet
   *[other] { $count } were not worked out yet
  }
# Below the answer, where many kits are left.
finder-more = { $count ->
    [one] Work out { $count } more kit
   *[other] Work out { $count } more kits
  }
# $figures is a list of the four names that follow.
finder-missing = For { $figures }, each kit’s own book stands in until you enter yours.
finder-leaf-height = leaf height
finder-leaf-width = leaf width
finder-thickness = thickness
finder-leaves = leaves

## On a kit's card
finder-fits-so-far = Fits so far
finder-fits-own = Fits as it is
finder-fits-check = Fits, but check first
finder-fits-poor = Can be made, but poorly
finder-fits-change = Fits with a change
finder-fits-not = Does not fit
finder-not-checked = Not checked
finder-time = About { $hours } in your book.
finder-failed = It could not be worked out.
