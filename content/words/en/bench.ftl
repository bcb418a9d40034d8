### The page “Work along”: one leaf at a time lies on the bench and is ticked as it is folded. It is read at arm's length with
### busy hands, and spoken by screen readers: keep phrases short. A leaf is one sheet of paper; a page is one of its two sides.

bench-title = { $title }: work along
# $table is the link below.
bench-no-script = This view follows your work leaf by leaf and needs JavaScript. { $table } has every leaf with its marks, cuts and folds.
bench-no-script-table = The pattern table
# $why is a whole sentence of its own.
bench-misfit = This kit does not fit the book in this address. { $why }
bench-table-link = The kit’s page has the pattern table and the fit panel

## The head of the page
# Read aloud before the kit's title, which is the link.
bench-home = Back to the kit’s page:
# A switch that keeps the device from dimming its screen.
bench-awake = Keep the screen on
# In place of the switch where the browser cannot do it.
bench-awake-none = Screen set by device
bench-menu = Menu
bench-place = { $place } of { $count ->
    [one] { $count } leaf
   *[other] { $count } leaves
  } to fold
bench-done-count = { $count } done
# In place of the line above where a step lies on the bench, such as making the gauge.
bench-step-place = Step { $place } of { $count } beside the leaves
# Working time so far, and what is left (unknown: only steps without an estimate); $first is the same for a maker who has made none before.
bench-time-estimated = { $worked } worked · estimated { $left } left, { $first } for a first piece
bench-time-own-pace = { $worked } worked · about { $left } left
bench-time-unknown = { $worked } worked
bench-time-none-left = { $worked } worked · none left
bench-minutes = { $minutes } min
# $minutes has two digits.
bench-hours-minutes = { $hours } h { $minutes } min

## The leaf
bench-stage = The leaf on the bench
bench-book-page = Book page
bench-leaf-label = Leaf
bench-pattern-page = Pattern page
# In place of the page number, large, on a leaf that has none.
bench-big-leaf = leaf { $leaf }
bench-done = Done
bench-folds = Folds, head to tail
bench-border = Border leaf { $number } of { $count } { $side ->
    [before] before the picture
   *[after] after the picture
  }
# A level that the leaf needs, after its number: its name, and the line of the gauge that it is folded at.
bench-level = { $name }, { $place }
bench-line = line { $line }, { $depth }
bench-note-whole = No marks: fold the whole leaf at level { $level } ({ $place }).
bench-note-stepped = First fold the whole leaf at { $name } ({ $place }). Cuts start at that folded edge.
bench-note-notch = Notch for the light: mark it from { $from } to { $to }, { $depth } deep from the unfolded fore-edge. Cut it after folding.
# $stretches is a list like “12–34 mm and 50–60 mm”.
bench-note-tacks = Tack at the end of the batch: { $stretches }.
bench-stretch = { $from }–{ $to }

## Work beside the leaves
# A step in a sentence, with what it is done to: a line, or a batch.
bench-step-of = { $step } ({ $of })
# What a step of one batch belongs to.
bench-step-page = See this step on the kit’s page
bench-of-batch = Batch { $number } of { $count }
bench-notch = Notch for the light
bench-tack = Tack loose flaps
bench-notch-place = { $from }–{ $to }, { $depth } deep
# $level is like “wall, line 3, 26 mm”.
bench-score-level = Level { $number }: { $level }
# A line is pressed on these leaves; $first and $last are leaves in words.
bench-score-run = { $count ->
    [one] On one leaf: { $first }.
   *[other] On { $count } leaves, from { $first } to { $last }.
  }

## A leaf in words
# How a leaf is named in a sentence: by its printed page, or by which unnumbered leaf it is.
bench-leaf = { $kind ->
    [front] front leaf { $index } of { $count } (leaf { $leaf })
    [end] end leaf { $index } of { $count } (leaf { $leaf })
    [plate] plate { $index } of { $count } after p. { $page } (leaf { $leaf })
   *[numbered] p. { $page } (leaf { $leaf })
  }
# The same as the beginning of what is spoken.
bench-spoken-leaf = { $kind ->
    [front] Leaf { $leaf }, front leaf { $index } of { $count }.
    [end] Leaf { $leaf }, end leaf { $index } of { $count }.
    [plate] Leaf { $leaf }, plate { $index } of { $count } after page { $page }.
   *[numbered] Leaf { $leaf }, page { $page }.
  }
bench-spoken-pattern-page = Pattern page { $page }.
bench-spoken-border = { $border }.
bench-spoken-marks = { $count ->
    [one] { $count } mark
   *[other] { $count } marks
  } in { $units ->
    [in] inches
   *[mm] millimetres
  } from the head: { $marks }.
bench-spoken-mark = { $at }, cut { $cut }
bench-spoken-folds = Folds from head to tail: { $folds }.
bench-spoken-left-out = Left out before it: { $leaves }.
bench-spoken-ticked = Ticked.
bench-spoken-not-ticked = Not ticked.

## The drawing of the leaf's edge
bench-edge = Fore-edge of the leaf. { $leaf }
bench-edge-head = head
bench-edge-tail = tail
# Above the marks; the sign stands before the depth of each cut.
bench-edge-marks = { $units } from the head ›cut

## The front in small
# What the drawing shows, for those who do not see it: folded leaves are strong, all others pale, a line stands at this leaf.
bench-front-now = The front in small: { $done } of { $count } leaves are folded. You are at { $percent }% of its width from the left.

## Buttons
bench-back = Back
bench-next = Next
bench-go-on = Go on
bench-all-done = All done
bench-open-jump = Go to a page or leaf
bench-lose = I skipped, tore or miscut this leaf
bench-cancel = Cancel
bench-close = Close

## Questions before a leaf
bench-check = Checkpoint: is this { $kind ->
    [numbered] page { $page }
   *[unnumbered] { $leaf }
  }, { $marks ->
    [none] with no mark
   *[some] with its first mark at { $mark }
  }?
bench-check-yes = Yes, that’s right
bench-check-no = No, something is off
bench-check-reason = Which page is in front of you?
bench-batch = Batch { $number } of { $count }: { $packing } of packing under the working side.
bench-batch-pieces = Batch { $number } of { $count }: { $packing } of packing ({ $pieces ->
    [one] { $pieces } piece
   *[other] { $pieces } pieces
  } of { $size }) under the working side.
bench-batch-leaves = { $count ->
    [one] { $count } leaf
   *[other] { $count } leaves
  }, to { $last }.
bench-batch-begin = Packed, begin
bench-measure-gate = Batch { $number } is folded.
bench-measure-why = { $count ->
    [one] Press its one leaf at the flap and measure it: that shows how far your book will close.
   *[other] Press its { $count } leaves together at the flaps and measure them: that shows how far your book will close.
  }
bench-measure-now = Measure
bench-measure-later = Not now

## Notices
bench-left-out-before = Left out before this: { $leaf }.
bench-put-back = Put it back in
# $leaves is a list of one to three leaves.
bench-not-ticked = Not ticked before this: { $leaves }.
bench-not-ticked-many = Not ticked before this: { $count } leaves, starting with { $first }.
bench-go-there = Go there
bench-are-folded = They are folded
# $steps is a list of one to three steps.
bench-not-done = Not done before this: { $steps }.
bench-not-done-many = Not done before this: { $count } steps, starting with { $first }.
bench-are-done = They are done
bench-end = { $count ->
    [one] The one leaf is folded.
   *[other] All { $count } leaves are folded.
  }
bench-end-rest = All other work is done, too.
# Where the book is opened to its hold width; $width is wider than that.
bench-wider = Your flaps push it wider, to about { $width }.
bench-hold-width-meaning = It is measured at the head, from the folded edge of the first picture leaf to that of the last.
bench-kit-changed = This kit has changed since you began: compare the next leaves with those you have folded.
bench-not-saved = This browser cannot save your progress: save it as a file before you leave.
# $why is a sentence of progress.ftl.
bench-kept-broken = The progress saved in this browser cannot be read, so you are starting again. { $why }

## Going to a page or leaf
bench-jump-number = Number
bench-jump-page = Go to book page
bench-jump-leaf = Go to leaf
bench-jump-not-whole = Write a whole number.
bench-jump-no-page = Page { $page } is not in this book: pages run from 1 to { $last }.
bench-jump-no-leaf = Leaf { $leaf } is not in this book: it has { $leaves ->
    [one] { $leaves } leaf
   *[other] { $leaves } leaves
  }.
bench-jump-page-on-leaf = Page { $page } is on leaf { $leaf }.
bench-jump-left-out = Leaf { $leaf } is left out.
bench-jump-unfolded = Leaf { $leaf } stays unfolded: folded leaves run from { $first } to { $last }.

## Leaving a leaf out, and putting it back in
bench-leave-out-this = Leave this leaf out?
bench-leave-out = Leave { $leaf } out?
bench-put-leaf-back = Put { $leaf } back in?
bench-leave-out-do = Leave it out
bench-spread = The rest of the picture is spread over the remaining leaves, so nothing is lost.
bench-spread-back = The rest of the picture is spread again, with this leaf.
bench-no-leaf-changes = No other leaf changes.
bench-leaves-change = { $count ->
    [one] { $count } leaf changes: { $first }. All before it keep their marks and ticks.
   *[other] { $count } leaves change, starting with { $first }. All before it keep their marks and ticks.
  }
bench-ticks-go = { $count ->
    [one] { $count } of them is ticked and would lose its tick.
   *[other] { $count } of them are ticked and would lose their ticks.
  } Already cut them? Choose Cancel; one missing leaf hardly shows.
bench-fold-away = Fold leaf { $leaf } whole, deep enough to vanish behind its neighbours, or cut it away near the gutter.
bench-left-out-now = { $count ->
    [one] Left out: { $leaf }. { $count } leaf has new marks.
   *[other] Left out: { $leaf }. { $count } leaves have new marks.
  }
bench-back-in-now = Back in: { $leaf }.
bench-cannot-leave-out = This leaf cannot be left out. { $why } { $remedy }
bench-cannot-close = The picture cannot close over it. { $why }
bench-before = Before
bench-after = After
bench-front-before = The front before
bench-front-after = The front after

## Measuring the first batch
bench-measure-title = Measure the first batch
bench-measure-lead = Press the folded leaves together where the flaps lie, and measure how thick they are. The kit can only estimate how much a springy fold adds; your own batch shows it.
bench-measure-leaves = Folded leaves
bench-measure-thickness = Thickness
bench-measure-save = Save
bench-measure-count-allowed = { $most ->
    [one] Allowed: 2 to { $most } leaf.
   *[other] Allowed: 2 to { $most } leaves.
  }
bench-measure-length-allowed = { $units ->
    [in] Allowed: a length like 3/8 or 9.5 mm.
   *[mm] Allowed: a length like 9.5 or 3/8 in.
  }
# $count is at least 2.
bench-measure-thickness-allowed = Allowed: { $least } to { $most }. { $count } leaves of this book are { $least } before they are folded.
bench-flap-bulk = Each flap is as bulky as { $bulk } leaves.
bench-rests = Folded, the book rests at about { $rest }°. The picture needs { $opening }°, a hold width of { $width }.
bench-holds = Your book closes far enough for it.
bench-pushes = Your flaps push it wider, to about { $width }. To hold it at the picture’s opening, press the folds harder and tie the book while it settles.

## The menu
bench-units = Lengths in
bench-millimetres = millimetres
bench-inches = inches
bench-left-out-title = Leaves left out
bench-left-out-none = none
bench-put-back-short = Put back in
# Read aloud for the button above.
bench-put-back-leaf = Put { $leaf } back in
bench-progress-title = Progress
bench-progress-lead = This piece is saved in this browser. A file takes it to another device. Open such a file under “My pieces”.
bench-save-file = Save as a file
bench-start-again = Start again
bench-start-again-sure = { $count ->
    [one] Clear the tick of { $count } leaf and of all other work, and start this piece again?
   *[other] Clear the ticks of { $count } leaves and of all other work, and start this piece again?
  }
bench-keys-title = Keys
bench-keys = Space, Enter or Page Down: done, or yes. Arrows: next and back. Backspace or Page Up: back. A swipe moves too.
