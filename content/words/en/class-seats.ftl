### What a seat has of its class: supplies, what is ready, its packet and its handout

# Heads of two lists in a seat's packet.
seat-brings = You bring
seat-supplied = There in the class
# What the teacher has made before the class.
seat-ready = { $stage ->
    [scores] your book, with its score lines pressed
   *[parts] your window’s parts, cut out
  }
# Over the title of a seat's packet.
packet-seat-over = Seat { $seat } · { $class }
# $book is a book in a line: "178 × 110 mm, 96 leaves, 9.5 mm thick".
packet-seat-book = Fitted to this book: { $book }.
# Beside the time of the work.
packet-time-in-class = at this seat’s pace, without what is ready; a guide
# On the class's page: a head, and a list of things.
class-supplied = There for you
class-supplied-list = In the class you find { $things }.

## Sentences of a handout, which hold for every book

handout-fold = Mark from the head. { $tool ->
    [scissors] Cut each mark square to the edge with short sharp scissors, one or two leaves at a time.
   *[knife] Cut each mark square to the edge with the knife, a mat under the leaf, in several light strokes.
  } Fold each strip at its line, tuck it behind, tick the row.
handout-fold-stepped = Fold the whole leaf at the front line. Mark from the head. { $tool ->
    [scissors] Cut square in from the folded edge with short sharp scissors.
   *[knife] Cut square in from the folded edge with the knife, a mat under the leaf.
  } Fold deeper strips again at their own lines, tuck them behind, tick the row.
# Above the steps of a kit whose leaves are folded by corners. $kit is its title.
handout-folded = { $kit }, without a knife
handout-tack = At the end of each batch, stick down each flap that is listed as a tack{ $tack ->
    [glue] . Use a pin-head of glue, with a slip of baking paper behind it.
   *[dots] {" "}with a glue dot.
  }
