### Fonts that a site's settings name, and characters that no font of the site has.

# $file: path of a font file.
font-missing = “{ $file }”, which is not there
font-no-font = “{ $file }”, which is no font of one face
# $files: what lies in the folder. $most: in megabytes.
font-files = a font in content/fonts (WOFF2, WOFF, TTF or OTF, up to { $most } MB); there are: { $files }
font-folder = a font in content/fonts: WOFF2, WOFF, TTF or OTF, up to { $most } MB
font-do-add = put the font there, or correct the name

## Characters without a font

# $letters: some of them. $more: how many others there are.
font-uncovered = { $letters }{ $more ->
    [0] {""}
    [one] {" "}and { $more } other character
   *[other] {" "}and { $more } other characters
  }, which no font of the site has
# A character and its number in Unicode: “月” (U+6708)
font-letter = “{ $letter }” ({ $code })
font-covered = letters of Latin, Greek and Cyrillic scripts, and what the fonts in the site’s settings have
font-do-name = put a font that has { $count ->
    [one] it
   *[other] them
  } into content/fonts and name it under fonts in content/site.yaml, or write it otherwise
# A level’s name on the gauge. $height: of its letters in mm, without the unit.
font-small = { $place }  { $field }: on the gauge its letters would be { $height } mm high, which is hard to read; shorten it
# A text that only pages show. $place: file, line and column.
font-warning = { $place }  { $field }: { $given }; readers see it in a font of their own, or as a box. To be sure: { $remedy }
