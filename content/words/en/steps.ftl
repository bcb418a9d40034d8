### The work, step by step: a title, a text with the kit's figures in it, and a gist that holds for every book (for a class's handout).

step-section-book = The book
step-section-window = Light and window
step-legend = What the lines of the drawings mean
# How long a step takes.
step-time = about { $time }
step-parts = Parts
step-tools = Tools

step-check = Check the book
step-check-text = Count leaves, not pages: a leaf is one sheet with two pages. This pattern is for { $leaves } leaves, { $height } tall and { $width } wide, pressed { $thickness } thick. Another book needs the pattern worked out for it.
step-check-gist = Measure height, width and thickness, and count leaves, not pages.

step-find = Find pattern page 1
step-find-text = The picture begins on { $first } (pattern page 1) and ends on { $last } (pattern page { $page }). Put a slip of paper at each.
step-find-gist = Put a slip of paper at the first and at the last picture leaf.

step-gauge = Set up the gauge
step-gauge-text = Cut the gauge from the packet, or mark a piece of card with these lines: { $lines }. Distances are from the fore-edge. Slip packing under the lower side as the support table says, so that the gauge lies level.
# A level's line: number and name of the level, number of the gauge's line, distance from the fore-edge.
step-gauge-line = { $number } { $name }: line { $line }, { $depth }
step-gauge-free-line = { $number } { $name }: { $depth }
step-gauge-gist = Glue it to card, cut it out, and slip packing under the lower side of the book so that it lies level.

step-score = Press the score lines
step-score-text = Press { $count ->
    [one] { $count } line
   *[other] { $count } lines
} with a blunt tool, following the scoring plan. Press just hard enough to crease the paper, never through it; try it on a spare leaf first. Scoring every line on every leaf takes more strokes, but there is nothing to look up.
step-score-gist = Crease the paper with a blunt tool along the gauge’s lines; never press through it.

step-border = Fold the border leaves
step-border-text = Fold { $before ->
    [0] no leaf
    [one] { $before } whole leaf
   *[other] { $before } whole leaves
} before the picture and { $after ->
    [0] none
   *[other] { $after }
} after it at the { $level } line, { $depth } from the fore-edge.
step-border-none = This kit has no border leaves.
step-border-gist = Fold whole leaves at the background line, before the picture and after it.

step-fold = Mark, cut and fold, batch by batch
step-fold-text = Work on at most { $batch } leaves at a time. Mark from the head edge. Slide a card or a thin mat under this one leaf, so that the leaves below stay whole. Cut square in from the fore-edge, never deeper than { $deepest }. Fold each strip at its level’s line and tuck it behind. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf.
step-fold-text-stepped = Work on at most { $batch } leaves at a time. First fold the whole leaf at the { $front } line, { $depth }; a leaf of one level is folded at its own line instead. Mark from the head edge. Slide a card or a thin mat under this one leaf, so that the leaves below stay whole. Cut square in from the folded edge, never deeper than { $deepest }. Fold each deeper strip back again at its own line and tuck it behind. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf.
step-fold-gist = A card under the leaf; mark from the head, cut square in, fold each strip at its line, tuck it behind, tick the row.

step-notch = In each batch: notch for the light
step-notch-text = { $count ->
    [one] One leaf is notched
   *[other] { $count } leaves are notched, from leaf { $first } to leaf { $last },
} so that the light stands inside. Mark each notch with the leaf’s other marks. Once the batch is folded and tucked, cut the notches one leaf at a time, with a card under the leaf. Cut through body and flap in several light strokes. The pocket’s floor is { $floor } from the head.
step-notch-gist = Once the batch is tucked, cut each notch in several light strokes, one leaf at a time.

step-tack = In each batch: tack loose flaps
step-tack-text = { $count ->
    [one] { $count } flap is loose, because the next leaf does not hold it.
   *[other] { $count } flaps are loose, because the next leaf does not hold them.
} Put a dot of glue under each one in the tack list, press, and let it dry before the next batch.
step-tack-gist = Put a dot of glue under each flap in the tack list, press, let it dry.

step-hold = Open to the hold width
step-hold-text = Stand the book up, head up. Open it until the folded edges of the first and last picture leaf are { $width } apart at the head edge, measured straight across. The boards’ edges are then about { $boards } apart. At this width the picture has its true shape. { $holder ->
    [yes] Set the holder on the head edge, its slots over the first and last picture leaf. Leave it there until all glue is dry.
   *[no] Prop it open at that width overnight.
}
step-hold-gist = Measure straight across at the head edge; there the picture has its true shape.

step-cut = Cut out the window
step-cut-text = Cut { $count ->
    [one] { $count } part
   *[other] { $count } parts
} of card and the glazing of acetate, from the templates or with the cut files. Cut inner outlines first, then the outer ones. Press the dashed line of the door; do not cut it.
step-cut-gist = Inner outlines first, then the outer ones; press the door’s dashed line, do not cut it.

step-frame = Glue the base frame and let it dry
step-frame-text = With the holder on, run double-sided tape or clear-drying glue round the back of the base frame. Press it onto the front tips, closure tab under its marked edge. Its outer edge stands an even { $lip } beyond the folded shape all round. Leave the holder on until the glue is dry, for the time on the label; overnight is safe. Make the door meanwhile.
step-frame-gist = Put the holder on, glue the frame to the front tips, and leave the holder until the glue is dry.

step-glaze = Glaze the door
step-glaze-text = Fold the flap back along the score and open it again. Then fix the glazing to the back of the door with narrow double-sided tape or a glue made for acetate. Keep it clear of the score line at the { $hinge ->
    [left] left
   *[right] right
}. Leave the door flat under a weight while it dries.
step-glaze-gist = Fix the glazing to the back of the door, clear of the score line, and leave it flat under a weight.

step-decorate = Decorate in layers
step-decorate-guide = Lay the decoration guide under the glazing.
step-decorate-dry = Take the guide away when all is dry.
step-decorate-gist = Lay the guide under the glazing; set each motif at its number in the figure, measured from the frame’s left and upper edge.

step-hang = Hang the door
step-hang-text = Fold the flap under the door and glue it to the face of the dry base frame at the { $hinge ->
    [left] left
   *[right] right
}, edges lined up. Keep the door ajar by a finger’s width until the glue has set.
step-hang-gist = Glue the flap to the dry frame, edges lined up; keep the door ajar by a finger’s width until it has set.

step-close = Close it
step-close-text = Glue the button on the door’s mark. Tie { $string } of string into a loop through the tab’s hole, long enough to slip over the button.
step-close-gist = Glue the button on its mark; tie the string through the tab so that the loop slips over it.

step-light = Set the light
step-light-text = When all glue is dry, take the holder off. Switch the LED light on and stand it on the pocket’s floor, { $setback } behind the front. Leave clear space all round: no paper touches its sides. If it does not stand steady on the notches, glue in a small floor of card first.
step-light-gist = When all is dry, stand the LED light on the pocket’s floor; no paper may touch it.
