### What the terminal says while packets are printed, and why they cannot be.

# $browser: how the browser was found. $path: its file.
print-start = { $count ->
    [one] Printing { $count } PDF
   *[other] Printing { $count } PDFs
  } with { $browser ->
    [setting] the browser of LEAFLIGHT_BROWSER,
    [installed] the installed browser
    [downloaded] the downloaded browser
   *[packaged] the packaged browser
  } { $path }
print-step = { $done } of { $count }: { $title }
print-done = { $count ->
    [one] Printed { $count } PDF
   *[other] Printed { $count } PDFs
  }
print-no-browser = no browser to print with: install Chrome or Chromium, or set LEAFLIGHT_BROWSER to the path of one
print-no-setting = LEAFLIGHT_BROWSER names "{ $path }", and no file is there: correct the path or unset it
# $page: the page’s file. $boxes: one or several of the messages below.
print-overflow = { $page }: would not print at true scale: { $boxes }. Shorten what stands there, or report this kit
# Pixels.
print-page-wide = the page is { $width } px wide in { $room } px
# $box: an element of the page. $text: its heading or what stands in it.
print-box-wide = { $box } “{ $text }” is { $width } px wide in { $room } px
print-box-high = { $box } “{ $text }” is { $height } px high in { $room } px

## Titles of PDFs

print-teacher = { $title }: teacher’s packet
print-measuring-card = { $title }: measuring card
print-all-seats = { $title }: packets of all seats
# At the foot of a class’s page: what it is, the day, the paper.
print-class-footer = { $title } · { $date } · { $paper }
