### The page on which a piece is made, stage by stage.

make-title = Make { $title }
make-lede = Stage by stage, from the closed book to the finished piece.
# Whose book the page is for; lengths in the reader's units.
make-book = In a book of { $leaves } leaves, { $height } tall, { $width } wide, { $thickness } thick.
make-no-script = Without scripts this page is for the kit’s own book, and nothing is ticked. Drawings of the { $steps } are on the kit’s page, and all leaves are in its { $table }.
make-no-script-steps = steps
make-no-script-table = pattern table
make-back = Back to { $title }

## Where the work is
make-now = { $percent } done
make-left = about { $time } to go
make-finished = All is done.
# $place is a leaf or other work in words.
make-go = Go on at the bench: { $place }
make-begin = Begin at the bench
make-notes = Notes on this piece
make-notes-help = Kept on this device with the piece.
make-not-kept = This browser keeps nothing, so what you tick here is lost when the page is left.

## Stages
# A stage of several steps; one of a single step is called by it.
make-stage = { $stage ->
    [prepare] Prepare the book
    [fold] Fold the leaves
    [finish] Notch and tack, in each batch
   *[window] Make the window
}
make-stage-steps = { $count ->
    [one] { $count } step
   *[other] { $count } steps
}
make-stage-done = done
make-stage-part = { $done } of { $count }
make-stage-here = you are here
make-item-done = Done
make-supplies = Supplies to lay out
make-supplies-part = { $done } of { $count } at hand

## Batches
make-batches = Batches
make-batch = Batch { $number }: { $first } to { $last }
make-batch-done = { $done } of { $count } folded
make-batch-table = Table of batch { $number }
make-batch-tick = Tick all of batch { $number }
make-supplies-count = { $count ->
    [one] { $count } thing
   *[other] { $count } things
}
make-here = Where the work is
make-share = Share of the work that is done
