### The figures that kits are compared by, and what a book needs for a kit: a name, a value, and a few words of explanation.

figure-picture = Picture
figure-picture-note = width × height on the front level
# $unit is mm or in.
figure-sides = { $width } × { $height } { $unit }
figure-levels = Levels
figure-levels-note = from front to back
figure-picture-leaves = Picture leaves
figure-picture-leaves-note = { $count ->
    [0] no border leaves
    [one] and { $count } border leaf
   *[other] and { $count } border leaves
}
figure-cuts = Cuts
figure-cuts-note = { $folds ->
    [one] { $folds } fold
   *[other] { $folds } folds
}, { $scores ->
    [one] { $scores } score line
   *[other] { $scores } score lines
}
figure-hold-width = Hold width
figure-hold-width-note = between the folded edges of the first and last picture leaf, at the head
figure-time = Time
# $first is a length of time.
figure-time-note = a guide, for a practised hand; a first piece takes about { $first }
# $all is how long glued things lie still beside the work, $each how long after each of so many batches.
figure-time-note-drying = a guide, for a practised hand; a first piece takes about { $first }; plus { $all } for glue to dry{ $times ->
    [one] { "" }
   *[other] , { $each } after each of { $times } batches
}

figure-leaves = Leaves
figure-leaves-note = { $before } border + { $picture } picture + { $after } border; the first { $needed } are used
figure-height = Leaf height
figure-height-least = at least { $height }
figure-height-note = head to tail; this book: { $height }
figure-width = Leaf width
figure-width-note = fore-edge to gutter; flaps need { $width } of it
figure-thickness = Thickness
figure-thickness-note = all leaves pressed together, without boards or cover

# How much work a kit is.
difficulty-easy = easy
difficulty-moderate = moderate
difficulty-demanding = demanding
