## Begin a kit: npm run new

new-help = npm run new -- FOLDER, with one of --picture FILE, --word WORD, --outline NAME or --icon NAME. All options: { $known }. With nothing behind it, it asks.
# $option: as it was given. $known: the options there are. $meant: the one of a similar name.
new-option = There is no option “{ $option }”. There are: { $known }.
new-option-meant = There is no option “{ $option }”. Did you mean { $meant }?
new-option-empty = { $option } needs something behind it, such as: npm run new -- moon --outline moon
new-option-alone = { $option } stands alone, with nothing behind it.
new-one-folder = A kit has one folder; given are { $folders }. Put a title or text of several words in quotes.
# $options: two or more of --picture, --word, --outline and --icon.
new-one-picture = A new kit has one picture; given are { $options }. Leave out all but one.
new-outline = There is no outline { $given }. There are: { $outlines }.
new-book = The book { $given } cannot be used. Allowed is height x width x thickness of its leaves, such as 198x126x21 or 7.75x5x0.875in.
new-no-leaves = A measured book needs its count of leaves, too: --leaves 180. A leaf is one sheet: two pages.
new-leaves = The leaves { $given } cannot be used. Allowed is a whole number from { $least } to { $most }; a leaf is one sheet: two pages.
new-light = The light { $given } cannot be used. Allowed is diameter x height, such as 22x24 or 0.875x1in.
new-units = The units { $given } cannot be used. Allowed are mm and in.
# $kit: the folder’s name.
new-exists = There is something at content/kits/{ $kit } already. Choose another name: npm run new -- { $kit }-two
new-folder-name = The folder’s name { $given } cannot be used. Allowed are small letters, digits and single hyphens, such as evening-boat.
# $file: as it was given.
new-no-file = There is no file { $file } to take as a picture.
# $most: MB.
new-file-large = { $file } is larger than the { $most } MB that a picture may have.
new-file-kind = { $file } is no picture that can be used. Allowed are SVG, PNG, JPEG, WebP and AVIF.
new-font-alone = --font says how a word is written, so it needs --word, too.
# $fonts: names of the fonts that come along.
new-no-font = There is no font { $font }. Allowed are { $fonts }, or a font file that ends in .ttf, .otf, .woff or .woff2.
# $most: MB.
new-font-large = { $font } is larger than the { $most } MB that a font may have.
# $meant: icons of similar names.
new-icon = There is no icon { $given }. Near are: { $meant }.
# Where nobody can be asked.
new-no-picture = Say which picture to begin with: --picture moon.svg, --word Harbour, --outline heart or --icon anchor.
new-gave-up = Nothing was made.
new-no-fit = No height was found at which the picture fits this book. The last try says: { $why }
new-no-fit-short = No height was found at which the picture fits this book.
new-too-much = This picture takes too long or too much memory. Simplify it, or save it smaller, and bring it again.

new-made = { $folder } is made: { $height } tall, opening { $opening }, { $hours }.
new-light-left-out = The light has no room in this picture and was left out; the guide says how to make room.
# $height: of the picture, a word in one line.
new-low-word = Letters { $height } tall are hard to fold. Fewer letters, or two lines with \n between them, stand taller.
new-usual-book = The book is a usual paperback; measure yours and put its figures into { $file }.
new-next = Look at it: npm start
new-next-check = After a change: npm run check -- { $kit }

## What is asked

new-ask-intro = A new kit
new-ask-from = What is the picture?
new-ask-from-word = A word
new-ask-from-outline = An outline: heart, star, moon …
new-ask-from-icon = An icon of an open set
new-ask-from-file = A drawing or photo of mine
new-ask-word = Which word?
new-ask-outline = Which outline?
new-ask-icon = Which icon? Type what it shows, in English
new-ask-file = Where is the file?
new-ask-title = What is the kit called?
new-ask-slug = And its folder?
new-ask-book = How large are the leaves? Height x width x thickness of all, pressed
new-ask-leaves = How many leaves has the book? A leaf is one sheet: two pages
new-ask-light = Is there a light? Diameter x height, or nothing
new-ask-light-none = no light
new-outline-name = { $outline ->
    [heart] heart
    [star] star
    [moon] moon
    [ring] ring
    [oval] oval
   *[arch] arch
}

## What stands in its file

new-text-summary = A folded book with { $title }.
new-text-body = Tell about the piece here, in Markdown.
new-text-book = Measure your own book; the guide says how.
new-text-levels = front (nearest the viewer) to back
new-text-fit = The opening follows, so that the picture keeps its shape.
new-text-icon = Icon “{ $icon }” of the set Phosphor Icons
new-level-picture = picture
new-level-ground = ground
# A level of a photograph, counted from the front.
new-level-number = tone { $number }
# A level that is told by its colour.
new-colour = { $colour ->
    [red] red
    [orange] orange
    [brown] brown
    [yellow] yellow
    [green] green
    [turquoise] turquoise
    [blue] blue
    [purple] purple
    [pink] pink
    [black] black
    [grey] grey
   *[white] white
}
# Another level of a colour, as in “blue 2”.
new-colour-again = { $colour } { $count }
