### The work, step by step: a title, a text with the kit's figures in it, and a gist that holds for every book (for a class's handout).

step-section-book = The book
step-section-window = Light and window
step-legend = What the lines of the drawings mean
# How long a step takes.
step-time = about { $time }
# How long glued things must lie still after a step, or after each of some batches.
step-drying = { $times ->
    [one] then { $time } to dry
   *[other] then { $time } to dry, in each of { $times } batches
}
step-parts = Parts
step-tools = Tools
# A part beside a step that is no part of the window.
step-part-gauge = gauge

step-check = Check the book
step-check-text = Count leaves, not pages: a leaf is one sheet with two pages. This pattern is for { $leaves } leaves, { $height } tall and { $width } wide, pressed { $thickness } thick. Another book needs the pattern worked out for it.
step-check-gist = Measure height, width and thickness, and count leaves, not pages.

step-find = Find pattern page 1
step-find-text = The picture begins on { $first } (pattern page 1) and ends on { $last } (pattern page { $page }). Put a slip of paper at each.
step-find-gist = Put a slip of paper at the first and at the last picture leaf.

step-gauge = Make the gauge
step-gauge-text = Print the packet’s gauge on card, or prick it through to card. Cut out the gauge with its holes, or the strips: each is as wide as its line’s distance from the fore-edge. The lines: { $lines }.
# A level's line: number and name of the level, number of the gauge's line, distance from the fore-edge.
step-gauge-line = { $number } { $name }: line { $line }, { $depth }
step-gauge-free-line = { $number } { $name }: { $depth }
step-gauge-gist = Print the gauge on card and cut it out; prick its holes. Or cut out its strips, each as wide as its line’s distance.

step-score = Press the score lines
step-score-text = Lay the gauge’s edge along the fore-edge, with packing under the lower side so that it lies level. Prick the line’s dots and join them along the ruler with the bone folder, or use the line’s strip. Follow the scoring plan: { $count ->
    [one] { $count } line
   *[other] { $count } lines
} in all. Crease the paper, never press through it; try a spare leaf first.
step-score-gist = Lay the gauge along the fore-edge, packing under the lower side. Prick the dots and join them along a ruler with a blunt tool; never press through.

step-border-before = Fold the leaves before the picture
step-border-before-text = Fold { $count ->
    [one] { $count } whole leaf
   *[other] { $count } whole leaves
} before the picture at the { $level } line, { $depth } from the fore-edge.
step-border-before-gist = Fold the whole leaves before the picture at the background line.

step-border-after = Fold the leaves after the picture
step-border-after-text = When the last batch is done, fold { $count ->
    [one] { $count } whole leaf
   *[other] { $count } whole leaves
} after the picture at the { $level } line, { $depth } from the fore-edge.
step-border-after-gist = Last of all leaves, fold the whole ones after the picture at the background line.

step-fold = Fold the picture, batch by batch
step-fold-text = Work on at most { $batch } leaves at a time. { $cutWith ->
    [scissors] Mark from the head edge. Cut square in from the fore-edge with short sharp scissors, one or two leaves at a time, never deeper than { $deepest }. Fold each strip at its level’s line and tuck it behind.
    [knife] Mark from the head edge. Slide the mat under this one leaf. Set the point on the score line and draw it outward through the fore-edge, in several light strokes, never deeper than { $deepest }. Fold each strip at its level’s line and tuck it behind.
   *[nothing] Fold each leaf whole at its level’s line and tuck it behind.
} Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf.
step-fold-text-stepped = Work on at most { $batch } leaves at a time. First fold the whole leaf at the { $front } line, { $depth }; a leaf of one level is folded at its own line instead. Mark from the head edge. { $cutWith ->
    [scissors] Cut square in from the folded edge with short sharp scissors, one or two leaves at a time, never deeper than { $deepest }.
   *[knife] Slide the mat under this one leaf. Set the point on the score line and draw it outward through the folded edge, in several light strokes, never deeper than { $deepest }.
} Fold each deeper strip back again at its own line and tuck it behind. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf.
step-fold-gist = Mark from the head, cut each mark square to the edge, fold each strip at its line, tuck it behind, tick the row.

step-notch = In each batch: notch for the light
step-notch-text = { $count ->
    [one] One leaf is notched
   *[other] { $count } leaves are notched, from leaf { $first } to leaf { $last },
} so that the light stands inside. Mark each notch with the leaf’s other marks. Once the batch is folded and tucked, cut them with the knife, one leaf at a time on the mat: through body and flap, in several light strokes. The pocket’s floor is { $floor } from the head.
step-notch-gist = Once the batch is tucked, cut each notch with the knife in several light strokes, one leaf at a time.

step-tack = In each batch: tack loose flaps
step-tack-text = { $count ->
    [one] { $count } flap is loose, because the next leaf does not hold it.
   *[other] { $count } flaps are loose, because the next leaf does not hold them.
} { $with ->
    [glue] At the end of each batch, put a pin-head of clear-drying glue under each one that is listed as a tack. Press it down with a slip of baking paper behind it. Let the glue dry before the next batch.
   *[dots] At the end of each batch, put a glue dot under each one that is listed as a tack, and press it down.
}
step-tack-gist = At the end of each batch, stick down each flap that is listed as a tack.

step-hold = Open to the hold width
step-hold-text = Stand the book up, head up. Open it until the folded edges of the first and last picture leaf are { $width } apart at the head edge, measured straight across. The edges of boards or cover are then about { $boards } apart. At this width the picture has its true shape. { $holder ->
    [yes] Set the holder on the head edge, its slots over the first and last picture leaf. Leave it there until all glue is dry.
   *[no] Prop it open at that width overnight with a folded strip of card.
}
step-hold-gist = Measure straight across at the head edge; there the picture has its true shape.

step-cut = Cut out the window
step-cut-text = With the knife, cut { $count ->
    [one] { $count } part
   *[other] { $count } parts
} of card, the holder among them, and the glazing of acetate, from the templates or with the cut files. Cut inner outlines first, then the outer ones. Press the dashed line of the door; do not cut it.
step-cut-gist = Inner outlines first, then the outer ones; press the door’s dashed line, do not cut it.

step-frame = Glue the base frame and let it dry
step-frame-text = With the holder on, run double-sided tape round the back of the base frame, and a little glue along its inner edge. Press it onto the front tips, closure tab under its marked edge. Its outer edge stands an even { $lip } beyond the folded shape all round. Make the door while it dries, holder on.
step-frame-gist = Put the holder on, glue the frame to the front tips, and leave the holder until the glue is dry.

step-glaze = Glaze the door
step-glaze-text = Fold the flap back along the score and open it again. Then fix the glazing to the back of the door with narrow double-sided tape. Keep it clear of the score line at the { $hinge ->
    [left] left
   *[right] right
}. Leave the door flat under a weight while the frame dries.
step-glaze-gist = Tape the glazing to the back of the door, clear of the score line, and leave it flat under a weight.

step-decorate = Decorate in layers
step-decorate-guide = Lay the decoration guide under the glazing.
step-decorate-dry = Fix flat ones with glue dots. Take the guide away at the end.
step-decorate-gist = Lay the guide under the glazing; set each motif at its number in the figure, measured from the frame’s left and upper edge.

step-hang = Hang the door
step-hang-text = Fold the flap under the door and glue it to the face of the dry base frame at the { $hinge ->
    [left] left
   *[right] right
}, edges lined up. Keep the door ajar by a finger’s width until the glue has set.
step-hang-gist = Glue the flap to the dry frame, edges lined up; keep the door ajar by a finger’s width until it has set.

step-close = Close it
step-close-text = Fix the button on the door’s mark with glue dots. Tie { $string } of string into a loop through the tab’s hole, long enough to slip over the button.
step-close-gist = Fix the button on its mark; tie the string through the tab so that the loop slips over it.

step-light = Set the light
step-light-text = When all glue is dry, take off what holds the book open. Switch the LED light on and stand it on the pocket’s floor, { $setback } behind the front. Leave clear space all round: no paper touches its sides. If it does not stand steady, lay a small floor of card on the notches first.
step-light-gist = When all is dry, stand the LED light on the pocket’s floor; no paper may touch it.
