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
