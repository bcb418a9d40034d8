### Kits that are folded by corners, without a knife.

## The steps

step-part-corner-gauge = corner gauge
step-part-folding-card = folding card

step-corner-gauge = Make the corner gauge
# $depth is empty where there is no card.
step-corner-gauge-text = { $with ->
    [gauge] Print the packet’s sheet with the corner gauge on card, and cut it out with scissors.
   *[card] Print the packet’s sheet with the corner gauge on card, and cut out both pieces with scissors. The folding card is { $depth } wide, the distance of a whole leaf’s fold from the fore-edge.
} Keep the gauge’s slanted side straight: every crease follows it.
step-corner-gauge-gist = { $with ->
    [gauge] Print the corner gauge on card, and cut it out with scissors.
   *[card] Print the corner gauge and the folding card on card, and cut them out with scissors.
}

step-corners = Fold the picture, batch by batch
step-corners-text = Work on at most { $batch } leaves at a time. Mark the fore-edge at both figures of the row, or from the leaf’s strip. Lay the corner gauge’s straight side along the fore-edge, its point at the upper mark. Fold the corner above toward you over the slanted side, slip the gauge out, and press. Turn the gauge over and fold the corner below at the lower mark in the same way. What stands between the marks is the picture. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf.
step-corners-empty = { $empty ->
    [middle] A leaf whose row gives one mark has both corners folded to it.
   *[card] A leaf without marks is folded whole over the folding card.
}
step-corners-turned = Where a row has a second figure after an arrow, the gutter is near. Mark that distance from the fore-edge on the head or tail edge. Fold along a ruler from mark to mark.
step-corners-gist = Mark the fore-edge twice, fold the corner above and the corner below along the gauge, press, tick the row.

step-border-card-before = Fold { $count ->
    [one] { $count } whole leaf
   *[other] { $count } whole leaves
} before the picture. Lay the folding card along the fore-edge, fold the leaf toward you over its inner edge, press, and pull the card out. The fold is { $depth } from the fore-edge.
step-border-card-after = When the last batch is done, fold { $count ->
    [one] { $count } whole leaf
   *[other] { $count } whole leaves
} after the picture over the folding card, { $depth } from the fore-edge.
step-border-middle-before = Mark { $count ->
    [one] { $count } leaf
   *[other] { $count } leaves
} before the picture { $middle } from the head, and fold both corners to the mark along the gauge.
step-border-middle-after = When the last batch is done, mark { $count ->
    [one] { $count } leaf
   *[other] { $count } leaves
} after the picture { $middle } from the head. Fold both corners to the mark along the gauge.

# The two steps in a sentence that holds for every book.
step-border-corner-before-gist = { $empty ->
    [middle] On each leaf before the picture, mark the middle of the fore-edge, and fold both corners to it along the gauge.
   *[card] Fold the whole leaves before the picture over the folding card.
}
step-border-corner-after-gist = { $empty ->
    [middle] Last of all leaves, fold both corners of those after the picture to the middle of the fore-edge.
   *[card] Last of all leaves, fold the whole ones after the picture over the folding card.
}

why-card-corners = { $sheet }, 250–300 g/m², for the corner gauge and the strip that props the book
why-scissors-card = to cut out what is of card; no leaf is cut

## The table

corner-table-text = One row per leaf. { $marks } are measured from the head edge in { $units }. The corner above the upper mark and the corner below the lower mark are folded over, each along a slant of 45°.
corner-table-marks = Marks
corner-table-turned = An arrow and a second figure mean a steeper crease: it ends that far from the fore-edge on the head or tail edge.
# $of is how often the picture meets a leaf at most.
corner-table-turns = “1 of { $of }” means that the picture meets this leaf { $of ->
    [2] twice
   *[other] { $of } times
}. The leaf shows the first strip, counted from the head; its neighbours show the others.
corner-table-upper = Upper mark
corner-table-lower = Lower mark
corner-table-turn = Shows
corner-table-whole = fold whole over the card
corner-table-middle = both corners to { $at }
# Where the picture reaches the head or the tail, no corner is folded.
corner-table-none = none
# The strip that a leaf shows, counted from the head, where the picture meets the leaf several times.
corner-turn = { $which } of { $of }
# A mark, and where a crease ends that is steeper than 45°.
corner-crease-end = → { $end }

corner-packet-text = Marks from the head in { $units }. Fold the corner above the upper mark and the corner below the lower one along the gauge. Shaded rows are checkpoints: compare page number and first mark.
corner-packet-check = Check: { $leaves ->
    [one] { $leaves } leaf
   *[other] { $leaves } leaves
}, { $folds ->
    [one] { $folds } fold
   *[other] { $folds } folds
}; { $sofar } of { $all } folds so far.
corner-packet-merged-text = { $count ->
    [one] One strip of the picture is
   *[other] { $count } strips of the picture are
} too short to fold and left out; the black marks show where that detail goes.

corner-chapter-pattern = { $leaves ->
    [one] { $leaves } leaf
   *[other] { $leaves } leaves
}, { $marks ->
    [one] { $marks } mark
   *[other] { $marks } marks
}, no cuts
corner-chapter-prepare = { $batches ->
    [one] leaves to find, { $batches } batch
   *[other] leaves to find, { $batches } batches
}
corner-merged-text = Too short to fold, so they were left out or joined to the next strip.
corner-merged-strip = leaf { $leaf }: { $place }

## Figures

figure-folds = Folds
figure-folds-note = { $marks ->
    [one] at { $marks } mark
   *[other] at { $marks } marks
}; no cuts, no glue
corner-figure-width-note = fore-edge to gutter; folded corners reach { $reach } inward
corner-figure-levels-note = one outline, folded without a knife
corner-figure-picture-note = width × height on the unfolded fore-edges
corner-figure-hold-note = between the first and last picture leaf as folded, at the head edge
# How much of the outline is seen from the front; $cut is the same kit's figure where leaves are cut.
corner-seen = From the front the folded corners match { $folded } of the drawn outline; cut leaves would match { $cut }.
corner-seen-alone = From the front the folded corners match { $folded } of the drawn outline.
corner-tacks-none = Nothing is cut and nothing is glued: there is nothing to tack.
corner-window-none = Light and window need a knife. Folded by corners, this kit goes without them.
corner-chapter-window = none: both need a knife

corner-preparation-borders = { $empty ->
    [middle] Border leaves: fold both corners of each to its middle
   *[card] Border leaves: fold each one whole over the folding card
}
corner-preparation-batches = Batches

## On paper

corner-packet-gauge = Corner gauge, true scale
corner-packet-gauge-alt = Corner gauge at true scale, and the card that whole leaves are folded over
corner-packet-plan-gauge = Corner gauge: { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
}, printed on one side, best on card.
draw-corner-gauge-make = Print on card. Cut along the full outlines with scissors; the slanted side must be straight.
draw-corner-gauge-use = Straight side along the fore-edge, point at the mark: fold the corner over the slanted side.
draw-corner-gauge-turn = Turn it over for the corner below the lower mark.
draw-corner-gauge-name = Corner gauge, 45°
draw-corner-gauge-flush = along the fore-edge
draw-corner-gauge-point = at the mark
draw-corner-card-name = Folding card, { $depth } wide
draw-corner-card-use = one long edge along the fore-edge, fold over the other
draw-corner-strip-key = Top: leaf, book page, (pattern page). White is what stays; fold the corner above and the corner below.

## Diagrams

draw-corner-mark = Mark the fore-edge twice
draw-corner-above = Fold the corner above
draw-corner-below = Turn the gauge, fold below
draw-corner-done = What stays is the picture
draw-corner-gauge-short = gauge
draw-corner-foot = The page before you, head up. The corners are folded toward you, onto this page.
draw-corner-steps = Folding a leaf by its corners in four steps. 1: mark the fore-edge { $from } and { $to } from the head. 2: lay the gauge’s straight side along the fore-edge, its point at the upper mark, and fold the corner above over the slanted side. 3: turn the gauge over, its point at the lower mark, and fold the corner below. 4: between the marks the fore-edge stays unfolded.
draw-corner-leaf = One leaf whole: { $title }. Marks on the fore-edge, from the head in { $units }: { $marks }. Between them the fore-edge stays; the corners outside are folded over.
draw-corner-leaf-turned = A crease ends { $end } from the fore-edge.
draw-corner-crease = crease
draw-corner-stays = stays
draw-front-corners = { $title }: the opened book seen from the front, { $leaves ->
    [one] { $leaves } leaf
   *[other] { $leaves } leaves
} folded by their corners
