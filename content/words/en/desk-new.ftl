## The desk: bring a picture, and make a kit of it
### Things on the table are named by the craft; the names stand on small paper tags and begin with “The”.

desk-new-title = Bring a picture
desk-new-back = All kits and classes
# Makes the kit’s folder; nothing is written before.
desk-new-make = Make the kit
desk-new-told-nothing = Nothing is written yet
desk-new-told-looking = Being drawn …
desk-new-told-making = Being made …
# $folder: below the project.
desk-new-told-ready = { $folder } can be made
desk-new-told-hurdles = Something is in the way
desk-new-leave = The picture you brought is not made into a kit yet. Leave it?
desk-new-hurdles = This is in the way
# $place: a file with its line, or a key. $given: what is wrong with it.
desk-new-hurdle = { $place }: { $given }
# $allowed: what would be allowed, as a phrase. $remedy: what to do, as a phrase.
desk-new-hurdle-way = Allowed: { $allowed }. What to do: { $remedy }.
desk-new-failed = This was not done: { $why }

## The picture

desk-new-picture = The picture
desk-new-origin = Where it comes from
desk-new-origin-file = A file of mine
desk-new-origin-word = A word
desk-new-origin-outline = An outline
desk-new-origin-icon = An icon
desk-new-choose = Choose a file
desk-new-choose-other = Choose another file
# What the place says that pictures are dropped on.
desk-new-drop = Drop a picture here
# $most: MB.
desk-new-kinds = SVG, PNG, JPEG, WebP or AVIF, at most { $most } MB
desk-new-reading = Your picture is being looked at …
desk-new-too-large = { $file } is larger than the { $most } MB that a picture may have.
desk-new-one-file = One picture makes a kit; the first of these was taken.
desk-new-word = Word, in one line or several
desk-new-font = Font
desk-new-font-usual = the usual one
desk-new-outline = Outline
desk-new-icon-search = What it shows, in English
desk-new-icon = Icon
desk-new-icon-none = Type a word, such as boat.
# Where the icons are from.
desk-new-icon-from = Icons of the open set Phosphor Icons (MIT)

## How a photograph becomes levels

desk-new-parting = What stands out
desk-new-trace = How it becomes levels
desk-new-trace-silhouette = One shape before the rest
desk-new-trace-tones = By how dark it is
desk-new-trace-depth = A depth picture: light is near
desk-new-trace-colours = By its colours
desk-new-levels = Levels, with the ground
desk-new-near = Which side stands out
desk-new-near-dark = the dark
desk-new-near-light = the light
desk-new-cut-out = Part of this picture is transparent, so the rest is the shape.
# The picture’s lightness as bars, for readers of the screen.
desk-new-histogram = How much of the picture is how light, from black to white
desk-new-limit = Limit between dark and light
# $number: from the dark side. $count: how many limits there are.
desk-new-limit-number = Limit { $number } of { $count }, from dark to light
desk-new-limits-found = As the program finds them
desk-new-tolerance = Smoothing
desk-new-least = Leave out what is smaller than
# A length that no ruler shows.
desk-new-millimetres = { $millimetres } mm
desk-new-inches = { $inches } in
desk-new-colour = Colour { $number }

## Which shapes of a drawing are which level

desk-new-sorting = What is which level
desk-new-sorted-by = Shapes told apart by
desk-new-sorted-names = names: { $names }
desk-new-sorted-colours = colours
desk-new-sorted-not = nothing: all one level
desk-new-marks = Levels
# $name: a layer, an object or a colour. $share: its share of the picture, as “12%”.
desk-new-mark = { $name }, { $share }
desk-new-level-front = 1, front
desk-new-level-ground = ground
desk-new-press = Press on a shape to find it in the list.
desk-new-relief = How it stands
desk-new-relief-raised = before its ground
desk-new-relief-hollow = sunk into it

## The sheet: what was brought, and what becomes of it

desk-new-brought = What you brought
desk-new-becomes = What becomes of it
desk-new-becomes-alt = The picture in { $count } levels, from the front to the ground
desk-new-crop = The part that is taken
desk-new-crop-left = Left edge
desk-new-crop-right = Right edge
desk-new-crop-top = Upper edge
desk-new-crop-bottom = Lower edge
# The value of an edge, for readers of the screen. $share: of the picture’s width or height, from its left or upper edge.
desk-new-crop-at = { $share }% from the start
desk-new-crop-all = Take all of it
desk-new-crop-usual = Take what is drawn
desk-new-crop-keys = Drag an edge, or move it with the arrow keys.
desk-new-notes = Noted

## The piece and the slip

desk-new-piece = The piece
desk-new-piece-none = The folded book shows here once there is a picture.
desk-new-slip = The slip
desk-new-height = Height
desk-new-opening = Opening
desk-new-cuts = Cuts
desk-new-time = Time
desk-new-levels-count = Levels
desk-new-unlit = The light has no room in this picture and would be left out.

# The browser could not read it; it may have been moved or removed meanwhile.
desk-new-unread = { $file } could not be read. Choose it once more.

## The names, the book, the lamp

desk-new-names = The name
desk-new-kit-title = Title
desk-new-slug = Folder
desk-new-slug-below = It stands in { $folder }.
desk-new-slug-taken = There is a folder of this name already.
desk-new-slug-letters = Small letters, digits and single hyphens only, such as evening-boat.
desk-new-draft = Draft: not published yet
desk-new-book = The book
desk-new-book-usual = A usual paperback
desk-new-book-measure = Measure a book
desk-new-lamp = The lamp
desk-new-lamp-in = A battery light stands inside
desk-new-lamp-diameter = Its width
desk-new-lamp-height = Its height
desk-new-lamp-none = No light. One can be put in later.
