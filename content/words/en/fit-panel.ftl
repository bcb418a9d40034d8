### What a kit's page answers while a reader replaces the kit's measurements with those of her own book.

fit-panel-fits = It fits well. This page is now worked out for your book.
fit-panel-check = It can be made, but check this first. This page is now worked out for your book.
fit-panel-poor = It can be made, but it will come out poorly. This page is now worked out for your book.
# How it comes out: paper that stays free, and how wide a part of the picture each leaf shows.
fit-panel-figures = { $head } stay free at the head and { $tail } at the tail. Each leaf shows { $pitch } of the picture. The work takes about { $hours }.
# Above buttons, each a change.
fit-panel-ways = { $count ->
    [one] This would make it fit:
   *[other] Each of these would make it fit:
  }
fit-panel-better = { $count ->
    [one] This would come out better:
   *[other] Each of these would come out better:
  }
# Beside each button.
fit-panel-way = { $quality ->
    [poor] It would come out poorly. About { $hours }, with { $head } free at the head and { $tail } at the tail.
   *[fits] About { $hours }, with { $head } free at the head and { $tail } at the tail.
  }
fit-panel-no-way = No change that this page can try would help. Choose another kit for this book, or another book.
fit-panel-own = This page shows the kit’s own book.
fit-panel-moved = The picture now begins { $head } from the head, so that it fits on your leaf.
fit-panel-wrong-field = The marked field is not a measurement that can be used. Correct it to go on.
fit-panel-files-wait = Files are made once the book fits.
fit-panel-misfit = It does not fit this book. { $why }
# While folded corners are compared with the drawing.
fit-panel-matching = Comparing the folded corners with the drawing …
fit-panel-saved = This book is saved in this browser. Other kits offer it.
fit-panel-not-saved = This browser cannot save your book. Bookmark this page instead.
fit-panel-still-own = The page still shows the kit’s own book.
fit-panel-no-file = This kit has no such file for your book.
# Below a field whose text cannot be taken.
fit-panel-allowed = Allowed: { $allowed }.

## What could not be fetched
load-kit-data = The kit’s data could not be loaded.
load-file-maker = The part of this page that makes files could not be loaded.
load-front-picture = The picture could not be drawn for your book: a part of this page could not be loaded.
load-measure = The part of this page that asks step by step could not be loaded. Fill in the fields instead.
load-refit = The part of this page that fits the kit to your book could not be loaded. Change a figure to try again.
load-packet = The part of this page that fits the packet to your book could not be loaded. Load the page again when you are online.
load-reasons = Why this cannot be done could not be loaded. Try again when you are online.
load-round = The view could not be loaded. The front picture above shows the same book. Press again to try once more.
