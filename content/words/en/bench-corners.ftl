### The page “Work along” where corners are folded, without a knife. It is read at arm's length and spoken: keep phrases short.

## The leaf
# A line for each crease, in the order of the hands; $at is the mark, such as 52 mm.
bench-corner-fold = { $corner ->
    [head] { $at }: fold the corner above it
   *[tail] { $at }: fold the corner below it
  }
# The same for a crease that is steeper than 45°; $end is a distance from the fore-edge.
bench-corner-fold-to = { $corner ->
    [head] { $at }: fold the corner above it, from the mark to { $end } on the head edge
   *[tail] { $at }: fold the corner below it, from the mark to { $end } on the tail edge
  }
# $which counts from the head.
bench-corner-turn = The picture meets this leaf { $of } times. It shows strip { $which }, counted from the head; its neighbours show the others.
bench-corner-whole = No marks: fold the whole leaf over the folding card, { $depth } from the fore-edge.
bench-corner-middle = Both corners go to one mark.
bench-corner-one = Only one corner is folded: the picture reaches the { $edge ->
    [head] head
   *[tail] tail
  }.
bench-corner-none = The picture fills the whole fore-edge: nothing is folded on this leaf.
# Above the marks in the drawing.
bench-corner-marks = { $units } from the head

## Reading aloud. The device's voice speaks these: no signs, short phrases.
bench-corner-heard-fold = { $corner ->
    [head] Mark { $at }: fold the corner above it.
   *[tail] Mark { $at }: fold the corner below it.
  }
bench-corner-heard-fold-to = { $corner ->
    [head] Mark { $at }: fold the corner above it, to { $end } on the head edge.
   *[tail] Mark { $at }: fold the corner below it, to { $end } on the tail edge.
  }
bench-corner-heard-whole = No marks. Fold the whole leaf over the folding card.

## A leaf that was skipped, torn or folded wrongly
bench-corner-lose = I skipped, tore or spoilt this leaf
bench-corner-unfold = A corner that lies at a wrong mark needs none of this: unfold it, smooth it, and fold it again.
bench-corner-ticks-go = { $count ->
    [one] { $count } of them is ticked and would lose its tick: its corners are folded anew.
   *[other] { $count } of them are ticked and would lose their ticks: their corners are folded anew.
  }
bench-corner-fold-away = Fold leaf { $leaf } whole, deep enough to vanish behind its neighbours.

## Measuring the first batch
# $at and $depth say where most of them have a flap.
bench-corner-measure-lead = Press the first { $leaves ->
    [one] picture leaf
   *[other] { $leaves } picture leaves
  } together { $at } from the head and { $depth } from the fore-edge, and measure how thick they are there.
bench-corner-measure-flaps = { $flaps ->
    [one] One of them has a flap there, and the kit counts with that.
   *[other] { $flaps } of them have a flap there, and the kit counts with that.
  }
