### My pieces: what a maker has under way, kept on her device.

## A piece
# How a piece is named while its maker gave it no word of her own.
piece-number = Piece { $number }
# In place of a kit's title where it is followed by one of its pieces.
piece-of-kit = { $title }: { $piece }

## At the bench
# $piece is its name, $day such as 3 October 2026.
piece-likely = You go on with { $piece }, last worked on { $day }.
# In which book a piece is made, after the line above.
piece-in-book = It is made in { $book ->
    [own] the kit’s own book
   *[reader] the book that you measured
  }.
piece-absent = The piece that this address names is not on this device.
piece-other-book = { $piece } is made in another book than this address says: its own book is shown.
piece-begin-there = Begin a piece in that book
piece-begin-another = Begin another piece
piece-open-other = Open { $piece }
piece-all = My pieces
piece-newer-same = This kit has a newer version. Its marks are the same, so you go on with it.
# $leaf is a leaf in words.
piece-newer-marks = { $count ->
    [one] This kit has a newer version, with other marks on one leaf: { $leaf }.
   *[other] This kit has a newer version, with other marks on { $count } leaves, starting with { $leaf }.
  } You go on with the pattern you began with.
piece-newer-depths = Its levels are folded at other depths, so the gauge and the lines are made anew.
piece-newer-done = { $count ->
    [0] None of the leaves you have folded is among them.
    [one] { $count } leaf that you have folded is among them, and would lose its tick.
   *[other] { $count } leaves that you have folded are among them, and would lose their ticks.
  }
piece-newer-misfit = This kit has a newer version that does not fit this book. You go on with the pattern you began with.
piece-old-pattern = You go on with the pattern you began with. The kit’s page and packet show a newer one.
piece-stay = Stay with it
piece-change-over = Change over
piece-change-over-sure = { $count ->
    [0] Change over to the newer version?
    [one] Change over to the newer version, and clear the tick of { $count } leaf?
   *[other] Change over to the newer version, and clear the ticks of { $count } leaves?
  }

## Going on with a piece, on the catalogue and on a kit's page
piece-under-way = Your pieces under way
# The link to a piece's bench: where its maker stopped, and how much of the work is done.
piece-continue = Continue: { $place ->
    [page] page { $number }, { $percent }%
    [leaf] leaf { $number }, { $percent }%
   *[step] { $percent }%
  }
# The same before the bench has laid a piece of an earlier version out.
piece-continue-count = Continue: { $count ->
    [one] { $count } leaf folded
   *[other] { $count } leaves folded
  }
piece-last = last worked on { $day }
# Under the last of a few pieces: leads to all of them.
piece-all-count = All { $count } pieces

## The page of all pieces
pieces-title = My pieces
pieces-summary = Everything you have under way on this device, and how to take it to another.
pieces-lead = Each book that you make is a piece, kept on this device alone. A file takes it to another device, or keeps it safe.
pieces-no-script = Your pieces are shown by a script, and scripts are off in this browser.
pieces-empty = Nothing is under way yet. Choose a kit, open “Work along”, and tick the first thing you do: your piece then stands here.
pieces-to-kits = Choose a kit
pieces-not-kept = This browser keeps nothing for this site. What you do stays only while its page is open: save it as a file.
pieces-broken = { $count ->
    [one] { $count } piece that is saved here cannot be read.
   *[other] { $count } pieces that are saved here cannot be read.
  } { $why }
pieces-open = Open a saved file
pieces-save-all = Save all as a file
pieces-save = Save as a file
pieces-remove = Remove
pieces-remove-sure = Remove { $piece } with { $count ->
    [one] { $count } folded leaf
   *[other] { $count } folded leaves
  } from this device? A file of it is the only way back.
pieces-edit = Name and notes
pieces-name = Name
pieces-notes = Notes
pieces-done = { $count ->
    [one] { $count } leaf folded
   *[other] { $count } leaves folded
  }
pieces-done-of = { $count } of { $of ->
    [one] { $of } leaf folded
   *[other] { $of } leaves folded
  }
pieces-finished = finished
pieces-percent = { $percent }% of the work
pieces-begun = begun { $day }
pieces-last = last worked on { $day }
# The page of all stages and supplies of one piece.
pieces-own-page = All steps and supplies
# The address of its kit's page with the book of the piece.
pieces-kit-page = Its kit’s page
pieces-kit-gone = This kit is no longer in this site. The piece stays here: save it as a file, or open its file where the kit is.

## Opening a file of pieces
# $what is a list of the lines below, $file the file's name.
pieces-opened = { $file }: { $what }.
pieces-added = { $count ->
    [one] { $count } piece added
   *[other] { $count } pieces added
  }
pieces-updated = { $count ->
    [one] { $count } piece brought up to date
   *[other] { $count } pieces brought up to date
  }
pieces-left = { $count ->
    [one] { $count } piece left as it was here
   *[other] { $count } pieces left as they were here
  }
# $why is a sentence of progress.ftl.
pieces-refused = { $file } cannot be opened. { $why } Choose a file that this site saved.
pieces-too-large = It is larger than { $most } MB.
pieces-not-saved = This browser has no room to save it.

## Where a file and this device both changed a piece
pieces-meet = This piece is on this device, too
# The same with the piece's name.
pieces-meet-title = { $piece } is on this device, too
pieces-meet-apart = It was worked on here and in the file since they were the same.
pieces-meet-older = The file is older than what is here.
pieces-meet-here = Here: { $what }.
pieces-meet-file = In the file: { $what }.
# $done is a line such as “57 of 120 leaves folded”.
pieces-meet-state = { $done }, last worked on { $day }
pieces-keep-here = Keep this device’s
pieces-take-file = Take the file’s
pieces-keep-both = Keep both
