### How the book is made ready before the first cut.

# The first two arguments name a leaf with its page.
preparation-places = Pattern page 1 is { $first }; the last picture leaf is { $last } (pattern page { $page }). A leaf is one sheet of paper; a page number is what is printed on it.
preparation-pages = Pattern pages and book pages
preparation-picture-leaves = Picture leaves
preparation-relation = How the numbers relate
preparation-offset = book page = pattern page { $sign ->
    [minus] −
   *[plus] +
} { $offset }
preparation-unnumbered = not numbered: count them
preparation-borders = Border leaves: fold each one whole at the background line
preparation-leaves = Leaves
preparation-count = How many
preparation-scoring = Scoring plan: which line on which leaves
preparation-line = Line
# Stands for the number of a line where the gauge has none at this depth.
preparation-line-free = own
preparation-depth = From fore-edge
preparation-level = Level
# A level: its number and its name.
preparation-level-name = { $number } { $name }
preparation-scoring-note = Lines that a range does not need are left out. Scoring all of them everywhere does no harm: more strokes, but nothing to look up.
preparation-batches = Batches and support: packing needed under the working side
preparation-batch = Batch
preparation-from = From
preparation-to = To
preparation-packing = Packing
preparation-pieces = Pieces
preparation-pieces-of = Packing pieces of { $size }
preparation-caliper = One leaf of this book is { $thickness } thick: its caliper (thickness ÷ leaves).
