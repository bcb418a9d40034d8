### A kit's page, and what its printed packet shares with it.

# The title of a kit's page in a link elsewhere is the kit's own.
kit-front-alt = { $title }, the opened book seen from the front, drawn from the computed leaves
kit-lit-alt = { $title }, the finished book lit from inside in a dark room
kit-moods = Picture
kit-mood-day = by day, open
kit-mood-lit = lit, window closed
# $version links to the list of versions.
kit-version-of = { $version }, { $day }
kit-version = Version { $version }
kit-units = Units
kit-millimetres = millimetres
kit-inches = inches
kit-tagline = { $difficulty } · { $folds ->
    [stepped] stepped folds
    [corner] folded corners, no knife
   *[single] single folds
} · opening { $opening } · { $direction ->
    [rtl] reads right to left
   *[ltr] reads left to right
}

# $levels is a list of: 74% of well.
kit-kept = From the front you see { $levels } as drawn.
kit-kept-level = { $percent } of { $level }
kit-kept-hidden = Sides of prouder leaves hide parts of deeper levels, mostly away from the middle.
kit-kept-unreached = Far out, deep folds do not reach all the way.

# Links to what is printed; $paper is the name of a paper.
kit-packet-on = Packet, { $paper }
kit-bench-on = Packet without strips, { $paper }
kit-large-on = Large-print table, { $paper }
kit-compact-on = Table in short, { $paper }
kit-my-packet = Print my packet
kit-my-large = Large-print table
# While the panel holds a figure that cannot be used, or a book that does not fit.
kit-held = Picture, figures and links here are those of the last book that fitted.
kit-work-along = Work along, leaf by leaf

# Headings of the page, in its order; the list of contents uses them, too.
kit-contents = On this page
kit-round = See it from all sides
kit-book = Does my book fit?
kit-cautions = Cautions
kit-supplies = Supplies and tools
kit-supplies-short = Supplies
kit-prepare = Prepare the book
kit-window = Light and window
kit-steps = Steps
kit-table = Pattern table
kit-tacks = Tack list
kit-tacks-short = Tacks
kit-versions = Versions
kit-photos = Photos

kit-credit = Picture after { $work }, { $source }, licence { $licence }.
kit-licence = Licence of this kit: { $licence }.
# After a link to another site.
kit-link-opens = opens { $host }

# Above warnings.
kit-warnings = Before you choose this fit

kit-book-text = The pattern on this page is worked out for one book: this many leaves, this thick, this wide, and tall enough for the picture. For any other book, enter its measurements below and the whole page follows.
kit-refit-text = Replace these with your book’s measurements. Everything on this page follows: picture, figures, table, window and files.
kit-refit-book = My book
kit-refit-fold = My gauge and folds
kit-refit-light = My light
# Above what the author tells of a kit that is cut, where a reader folds its corners.
kit-story-of-cut = The author tells of this kit as it is cut. Your steps below fold it without a knife.
# Where corners are folded: tells how much of the drawn outline will be seen from the front on the reader's book.
kit-refit-match = Compare with the drawing
kit-refit-keep = Remember this book
kit-refit-kept = Use my saved book
kit-refit-reset = Back to the kit’s own book

# Above the table of leaves. The three arguments name what is emphasised; $units is the word for the units of length.
kit-table-text = One row per leaf. { $marks } are measured from the head edge. The arrow gives the { $cut } at that mark, measured from the fore-edge inward. { $folds } lists the level of each strip from head to tail. Lengths are in { $units }.
kit-table-text-stepped = One row per leaf. { $marks } are measured from the head edge. The arrow gives the { $cut } at that mark, measured from the folded edge once the whole leaf is folded at the { $level } line. { $folds } lists the level of each strip from head to tail. Lengths are in { $units }.
kit-table-marks = Marks
kit-table-cut = cut
kit-table-folds = Folds
# A level of the list: its number is in bold before it.
kit-level = { $number } { $name }, { $depth }{ $background ->
    [yes] {" "}(background)
   *[no] {""}
}
kit-level-line = { $number } { $name }, line { $line }, { $depth }{ $background ->
    [yes] {" "}(background)
   *[no] {""}
}
kit-table-caption = Pattern table of { $title }
table-leaf = Leaf
table-pattern-page = Pattern page
table-book-page = Book page
table-marks = Marks › cuts
table-folds = Folds
# Stands where a border leaf has no pattern page.
table-border = border
table-whole = whole leaf
kit-table-notch = light: notch { $notch }
kit-table-notch-place = { $from } to { $to }, { $depth } deep
kit-table-checkpoint = checkpoint: page number and first mark

kit-merged = { $count ->
    [one] { $count } merged strip
   *[other] { $count } merged strips
}
kit-merged-text = Too short to fold, so each was merged with the neighbour whose depth is nearest.
kit-merged-strip = leaf { $leaf }: { $place }, level { $level } into level { $into }

kit-tacks-text = The next leaf does not hold these flaps. Give each one a dot of glue. Measured from the head.
kit-tacks-none = The next leaf holds every flap of this kit: there is nothing to glue.
# A leaf and a stretch of it.
kit-tack = { $leaf }: { $place }
kit-tacks-held = { $count ->
    [one] { $count } more loose stretch is too short to need it; the JSON lists it, too.
   *[other] { $count } more loose stretches are too short to need it; the JSON lists them, too.
}
