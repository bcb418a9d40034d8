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
# $left: print-left or print-left-short.
print-step-left = { $done } of { $count }, { $left }: { $title }
print-so-far = { $done } of { $count } PDFs printed, { $left }
# $time: 3 min, or 1 h 20 min.
print-left = about { $time } left
print-left-short = less than a minute left
print-stopped = Stopped after { $done } of { $count } PDFs
print-done = { $count ->
    [one] Printed { $count } PDF
   *[other] Printed { $count } PDFs
  }
# $variable: of the environment. $given: what it holds.
print-presses = { $variable } is “{ $given }”, and allowed is a whole number of browsers that print at once, from 1 to { $most }. Correct it, or unset it
print-no-browser = no browser to print with: install Chrome or Chromium, or set LEAFLIGHT_BROWSER to the path of one
print-no-setting = LEAFLIGHT_BROWSER names "{ $path }", and no file is there: correct the path or unset it
# $fault: what the system calls it.
print-not-unpacked = the packaged browser cannot be unpacked into { $folder } ({ $fault }). Make that folder writable, or set LEAFLIGHT_BROWSER to the path of a browser
print-no-sandbox-root = The browser prints without its sandbox, as it has none for root. Run the build as another user to have it.
print-no-sandbox = The browser prints without its sandbox, as this system does not allow it (user namespaces are off).
# $how: a code, a signal or the system’s name of the fault, and what the browser said last.
print-browser-ended = the browser { $path } did not start ({ $how }). Correct or unset LEAFLIGHT_BROWSER, or install Chrome or Chromium
print-browser-silent = the browser { $path } did not start within { $seconds } seconds. End it, or set LEAFLIGHT_BROWSER to the path of another
print-browser-died = the browser { $path } ended while it printed, twice ({ $how }). Build again, or set LEAFLIGHT_BROWSER to the path of another
print-browser-stuck = the browser { $path } did not answer within { $seconds } seconds while it printed. Build again, or set LEAFLIGHT_BROWSER to the path of another
print-browser-strange = what it answers is no message of a browser
# $page: the page, as it is called in the site’s address. $fault: the browser’s words, in English.
print-failed = { $page }: the browser { $path } cannot print it ({ $fault }). Build again, or set LEAFLIGHT_BROWSER to the path of another
# $addresses: what the page asked for.
print-blocked = { $page }: asks for what is no file of this site, and would print without it: { $addresses }. Put the file into the site
# $page: the page. $boxes: one or several of the messages below.
print-overflow = { $page }: would not print at true scale: { $boxes }. Shorten what stands there; where nobody wrote it, report this page with its kit or class
# $text: what reaches out. $size and $room: millimetres.
print-page-wide = “{ $text }” makes the page { $size } mm wide, and it has { $room } mm
# $heading: the heading that it stands below.
print-box-wide = below “{ $heading }”, “{ $text }” needs { $size } mm of width, and there are { $room } mm
print-box-high = below “{ $heading }”, “{ $text }” needs { $size } mm of height, and there are { $room } mm

## Titles of PDFs

print-teacher = { $title }: teacher’s packet
print-measuring-card = { $title }: measuring card
print-all-seats = { $title }: packets of all seats
print-to-read = { $title }: what all seats read
print-to-cut-out = { $title }: what all seats cut out of card
print-plan-of-class = { $title }: print plan
print-cut-sheets = { $title }: cut sheets at true size
# At the foot of a class’s page: what it is, the day, the paper.
print-class-footer = { $title } · { $date } · { $paper }

# Of a field: $page is a page of the site, kits/moon/packet
print-text-over = a text that leaves its box on { $page }
print-text-fits = a text that its box has room for
