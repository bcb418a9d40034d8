### What is wrong with a file of the site before anything in it is read: where it is, how large, in which encoding. Told to authors
### on the terminal. Each thing has three short texts: what was given, what is allowed, and what to do (remedy).

## What a message is about

file-field = { $kind ->
    [picture] picture
    [raster] picture
    [motif] motif
    [photo] photo
    [folder] folder
   *[text] file
  }

## What was given

file-missing = the file is not there
file-link-nowhere = a link that leads nowhere
# $home: a folder: content/kits/moon
file-link-outside = a link that leads out of { $home }
file-not-a-file = { $is ->
    [folder] a folder
    [pipe] a pipe
    [socket] a socket
   *[device] a device
  }
file-not-a-folder = no folder
file-forbidden = a file that this account may not read
# $code: the system’s own name of the fault: EIO
file-unreadable = the system cannot read it ({ $code })
file-too-large = { $size } MB
file-empty = an empty file
file-other-content = { $is ->
    [avif] an AVIF photo
    [gif] a GIF image
    [gzip] a file compressed with gzip
    [heic] a HEIC photo
    [jpeg] a JPEG photo
    [office] a document of an office program
    [pdf] a PDF document
    [png] a PNG image
    [postscript] a PostScript file
    [svg] an SVG drawing
    [tiff] a TIFF image
    [webp] a WebP photo
    [zip] a ZIP archive
   *[unknown] a file of another kind
  }
file-encoding = { $seems ->
    [damaged] UTF-8 with a wrong byte
    [binary] no text, but binary data
   *[text] text that seems to be { $seems }
  }
# $byte: 0xE9. It follows file-encoding.
file-encoding-byte = { $what }, as the byte { $byte } shows
# $code: U+0007
file-control = the control character { $code }

## What is allowed

file-allowed = { $kind ->
    [photo] a photo of at most { $most } MB: { $kinds }
    [raster] a picture of at most { $most } MB: { $kinds }
    [picture] an SVG picture in UTF-8 of at most { $most } MB
    [motif] an SVG picture in UTF-8 of at most { $most } MB
    [table] a table of at most { $most } MB: CSV in UTF-8 or UTF-16, XLSX or ODS
    [font] a font file of at most { $most } MB
   *[text] a text file in UTF-8 of at most { $most } MB
  }
file-allowed-folder = a folder that this account may read
file-allowed-inside = what is in { $home } itself
file-allowed-characters = letters, signs, tabs and line ends

## What to do

file-do-add = correct the name, or add the file
file-do-link = put what it leads to in place of the link
file-do-replace = remove it, and put the file in its place
file-do-folder = put the folder in its place
file-do-permission = give yourself the permission to read it
file-do-system = copy the file anew, or look after the disk
file-do-smaller = { $kind ->
    [photo] save it smaller, as pages show photos at most 1600 pixels wide
    [raster] save it smaller: 2400 pixels on the longer side are enough
    [picture] simplify the drawing, and leave images out of it
    [motif] simplify the drawing, and leave images out of it
    [font] take the font of one language or script, which is smaller
   *[text] shorten it, or see whether it is the right file
  }
file-do-write = { $kind ->
    [photo] export the photo again
    [raster] export the picture again
    [picture] export the drawing again as plain SVG
    [motif] export the drawing again as plain SVG
    [font] copy the font file again
   *[text] write it, or remove the file
  }
file-do-unpack = unpack it, and name the file that was in it
file-do-export = { $kind ->
    [photo] save it as JPEG or PNG
    [raster] save it as PNG or JPEG
    [picture] export the drawing as plain SVG from your drawing program
    [motif] export the drawing as plain SVG from your drawing program
    [table] export the table as CSV from your spreadsheet
   *[text] save it as plain text
  }
file-do-utf8 = save it as UTF-8 in your editor
file-do-character = remove this character
