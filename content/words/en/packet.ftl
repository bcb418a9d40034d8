### The printed packet and the large-print table.

packet-title = { $title }: packet
packet-bench-title = { $title }: packet without strips
packet-compact-title = { $title }: table in short
packet-large-title = { $title }: large-print table
packet-seat-title = Seat { $seat } · { $title }: packet
# Above the kit's name on the cover.
packet-over = Leaflight packet
packet-over-seat = Leaflight packet · seat { $seat }
packet-version = version { $version }, { $day }
packet-licence = kit licence { $licence }
packet-credit = picture after { $work }, { $source }, { $licence }
packet-warnings = Before you begin
packet-gauge = Scoring gauge, true scale
packet-gauge-more = Strips of the gauge, true scale
packet-gauge-alt = Scoring gauge at true scale, with a line and a strip for each of the kit’s distances from the fore-edge
packet-test = Test your book first
packet-test-corner = A corner of a middle leaf, folded to and fro twice, does not come off.
packet-test-grain = A leaf bends more easily along head to tail than across.
packet-test-spine = Opened in the middle, in stages, the spine holds every leaf.
packet-test-glue = A dot of glue, dried and pulled, takes paper along: it is not coated.
packet-test-clean = No mould and no smell of it. Wear a mask where there is dust.
packet-test-cloth = No green cloth of the 19th century, which may hold arsenic.
packet-merged = Merged strips
packet-merged-text = { $count ->
    [one] One strip of the picture is
   *[other] { $count } strips of the picture are
} too short to fold. Each is joined to the neighbour whose depth is nearest; the black marks show where that detail goes.
packet-strips = Marking strips, true scale: { $batches }, leaves { $first } to { $last }
packet-strips-part = Marking strips, true scale: { $batches }, leaves { $first } to { $last }, part { $part } of { $parts }
packet-strips-batches = { $count ->
    [one] batch { $first }
   *[other] batches { $first } to { $last }
}
packet-strips-alt = Marking strips for leaves { $first } to { $last } at true scale
packet-templates = Templates, true scale: { $parts }
packet-templates-alt = Templates at true scale: { $parts }

packet-table-alone = { $size ->
    [large] { $title }: pattern table
   *[compact] { $title }: pattern table in short
}
# Above the table; $levels is a list.
packet-table-text = Marks from the head in { $units }; ›cut from the fore-edge. Levels: { $levels }.
packet-table-text-stepped = Marks from the head in { $units }; ›cut from the folded edge (after the whole leaf is folded at the { $level } line). Levels: { $levels }.
packet-table-level = { $number } { $name }
packet-table-level-line = { $number } { $name } (line { $line })
packet-table-reading = A boxed number is the level that a strip is folded to; the marks stand between, from head to tail. Shaded rows are checkpoints: compare page number and first mark.
packet-table-notches = A notch has its heights from the head and its depth from the unfolded fore-edge.
packet-table-border = { $place ->
    [opening] Opening border leaves: fold them first
   *[closing] Closing border leaves: fold them last
}
packet-table-batch = Batch { $number }: leaves { $first } to { $last }
# $pieces is 0 where the kit says nothing of packing pieces.
packet-table-packing = Packing under the working side: { $packing }{ $pieces ->
    [0] .
    [one] , one piece.
   *[other] , { $pieces } pieces.
}
packet-table-page = Page
packet-table-marks = Folds and marks, head to tail
packet-table-run = { $first }–{ $last }
packet-table-named = { $from } to { $to }
packet-table-notch = Notch
packet-table-notch-at = Notch { $from }–{ $to }
packet-table-then-notch = { $count ->
    [one] When all are folded: cut the notch.
   *[other] When all are folded: cut the { $count } notches.
}
packet-table-then-tack = Then tack { $list }.
packet-table-tack = leaf { $leaf }: { $place }
packet-table-check = Check: { $leaves ->
    [one] { $leaves } leaf
   *[other] { $leaves } leaves
}, { $cuts ->
    [one] { $cuts } cut
   *[other] { $cuts } cuts
}; { $sofar } of { $all } cuts so far.
packet-table-last = Leaf { $leaf } ends the pattern.

## What to print of a packet, on its cover

packet-plan = What to print
packet-plan-reading = To read and to work by: { $pages } pages, on both sides of { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
} of paper.
packet-plan-reading-uncounted = To read and to work by: all pages before the gauge, on both sides of the paper.
packet-plan-gauge = Scoring gauge: { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
}, printed on one side, best on card.
packet-plan-strips = Marking strips: { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
}, printed on one side. Leave them out if you mark from the table.
packet-plan-templates = Templates of the window: { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
}, printed on one side.
# Pages to choose when printing.
packet-plan-at = { $count ->
    [one] (page { $first })
   *[other] (pages { $first } to { $last })
}
packet-plan-all = In all { $sheets } sheets of paper.

# The bar above a packet in the browser.
packet-paper = Paper
packet-print = Print this packet
packet-scale = at “actual size” or 100%
paper-a4 = A4
paper-letter = US Letter
paper-letter-short = Letter

# At the foot of every printed page, separated by dots.
packet-footer-version = version { $version }
packet-footer-book = { $leaves } leaves of { $height } × { $width }
packet-page-number = page { $page } of { $pages }
# Told in the browser where the book in the address does not fit.
packet-misfit = This kit does not fit the book in this address. { $why } Go back to the kit’s page and choose one of its offers.
