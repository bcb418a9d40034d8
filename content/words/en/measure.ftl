### The book in four questions: one measurement a screen, with its picture.

measure-start = Measure my book, step by step
# $step of four.
measure-step = { $step } of { $count }
measure-back = Back
measure-next = Next
measure-done = Use these measurements
measure-cancel = Cancel
measure-yes = Yes
measure-no = No
measure-unread = The marked field cannot be used.

## What is asked
measure-pages = How many pages does it have?
measure-pages-lead = Look for the last page that carries a number. Then count leaves from the front to the one with page 1.
measure-behind = Leaves behind the last page
measure-help-behind = Blank ones, or with advertisements. Leave it empty where there are none.
measure-height = How tall is a leaf?
measure-width = How wide is a leaf?
measure-thickness = How thick are all leaves?
measure-check = Is the count right?
measure-check-lead = Count to leaf { $leaf }. Its front should carry page { $page }. Does it?
measure-check-page = Page on the front of leaf { $leaf }
measure-check-help = The printed number on the side that you see first as you turn to it.

## What is answered
# The leaves that follow from the pages.
measure-leaves = The book has { $leaves } leaves.
measure-check-back = Fronts carry odd numbers. Turn leaf { $leaf } back and read its front.
measure-check-impossible = That cannot be, as the book was counted. Go back, and count again.
measure-check-page-one = Then page 1 is on leaf { $leaf }. That is corrected.
measure-check-unnumbered = { $leaves ->
    [one] Then { $leaves } leaf before it carries no number. Find it, and write the page before it.
   *[other] Then { $leaves } leaves before it carry no number. Find them, and write the pages before them.
  }

## In an empty field, and under the pictures
measure-hint-kit = kit’s: { $figure }
measure-hint-now = so far: { $figure }
measure-hint-each = each kit’s own
measure-draw-pages = An opened book. On the left the last page that carries a number, on the right the leaf with page 1, and the leaves before it.
measure-draw-page-one = page 1
measure-draw-last = last number
measure-draw-height = A leaf of the opened book. Its height is measured along the fore-edge, from head to tail.
measure-draw-width = A leaf of the opened book. Its width is measured from the fore-edge to where it disappears in the gutter.
measure-draw-thickness = All leaves, pressed together, without the boards. Their thickness is measured at the fore-edge.
measure-draw-this = measure this
measure-draw-check = An opened book. Leaf { $leaf } lies on the right, and page { $page } stands on its front.
