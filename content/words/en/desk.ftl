### The design desk: a page that npm start serves to its own machine, where kits are made by looking. Never part of a site.

# On the terminal. $address: where a browser of this machine opens it.
desk-opened = The desk is at { $address }
desk-name = The design desk
# $site: the title of the site.
desk-page-title = The desk of { $site }
desk-opening = The desk is being laid …
desk-no-script = The desk needs JavaScript. Allow it for this address, and load the page again.

## Where the server refuses something. Each stands alone.

desk-closed-title = The desk is locked
desk-unopened = Open the desk with the address that npm start told on the terminal: its key lets in this browser alone.
desk-other-host = The desk answers to 127.0.0.1, localhost and [::1] alone.
desk-other-origin = The desk only answers its own pages.
desk-other-method = The desk does not take this way of asking.
desk-other-type = The desk only takes what its own pages send.
desk-other-form = What was sent is not what the desk takes. Load the page again, as the program may have changed.
desk-too-much = That is more than the desk takes at once.
desk-not-found = There is nothing at this address of the desk.
desk-not-of-desk = The desk only has kits, classes, their seats’ tables and the site’s settings.
# $code: the system’s name of the fault.
desk-unwritable = Nothing was written, as { $why ->
    [link] the file is a link now: put the file itself there.
    [read-only] the file is read-only: let it be written, and try again.
    [forbidden] permission is missing: give yourself permission to write in its folder, and try again.
    [full] the disk is full: make room on it, and try again.
   *[failing] the disk cannot be written ({ $code }): check it, and try again.
  }
# $first, $last: numbers of ports.
desk-no-port = the ports { $first } to { $last } are all taken. State another one: npm start -- --desk-port 9000

## Opening a file in an editor

desk-no-editor = No editor was found. State yours in the variable VISUAL or EDITOR, and start again.
# $why: what the system says, in English.
desk-editor-failed = The editor did not open: { $why }

## The list of all kits and classes

desk-list-title = On the desk
# What stands in the line above the list. $broken, $look: how many cannot be made, or need a look.
desk-sum = { $kits ->
    [one] One kit
   *[other] { $kits } kits
  }{ $classes ->
    [0] {""}
    [one] , one class
   *[other] , { $classes } classes
  }{ $broken ->
    [0] {""}
    [one] , one to mend
   *[other] , { $broken } to mend
  }{ $look ->
    [0] {""}
    [one] , one to look at
   *[other] , { $look } to look at
  }
# While kits are still being worked out.
desk-sum-waiting = { $known } of { $all } are worked out; the others follow
desk-new-kit = Begin a kit
desk-see-site = See the site
desk-shared-wrong = What all pages share is not as it should be
desk-kits = Kits
desk-classes = Classes
desk-no-kits = There is no kit yet. Begin one from a picture, a word or an outline.
desk-looking = The kits are being looked through …
desk-find = Find a title
# States of a kit or a class, each in a word or two on a small seal.
desk-state-broken = To mend
desk-state-look = Needs a look
desk-state-waiting = Not worked out yet
desk-state-fine = Fine
desk-draft = Draft
# Leads to where a kit is changed by looking, and to the seats of a class.
desk-lay-kit = Lay it on the table
desk-lay-class = Lay out its seats
# The kit’s page of the served site.
desk-see-page = See its page
desk-open-file = Open its file
# In the file’s editor, at a line.
desk-open-at-line = Open { $file } at line { $line }
desk-open-at = Open { $file }
desk-look-at = { $count ->
    [one] One thing to look at
   *[other] { $count } things to look at
  }
# Of a kit or a class that is fine all the same.
desk-noted = { $count ->
    [one] One remark
   *[other] { $count } remarks
  }
desk-more-messages = { $count ->
    [one] One more
   *[other] { $count } more
  }
# Parts of a message, below each other, after the name of a field in bold. $given, $allowed and $remedy are phrases.
desk-given = given { $given }.
desk-allowed = Allowed: { $allowed }.
desk-remedy = To do: { $remedy }.
# The editor was asked to open a file.
desk-opening-file = { $file } opens in your editor.

## Printing a kit or a class

desk-print = Print its PDFs
# For those who hear the page. $title: of the kit.
desk-printing = Printing { $title }
desk-print-begins = The press is being made ready …
desk-print-far = { $done } of { $of } printed
# $left: about how many seconds.
desk-print-far-left = { $done } of { $of } printed, about { $left } s left
desk-printed = All PDFs are printed.
desk-print-failed = The PDFs could not be printed:

## The server is away

desk-gone = The desk’s server does not answer. Start it again with npm start.

## What npm start puts above and below a page of the site

served-wrong = This is not as it should be.
# Follows the sentence before.
served-last-good = The page below is the last state that could be made.
served-nothing = Until it is mended, this page is without it.
served-to-desk = Look at it on the desk
# Stands in a strip below a page, before what only npm start offers there.
served-here = Only here, while the site is being made:
served-on-desk = Open it on the desk
served-printed = All PDFs are printed: the links of this page open them at once.
served-away = npm start does not answer. Start it again.
# What a program is told that asks for the site by another name of this computer. Names of computers and what is typed stay as they are.
served-other-host = This site answers to 127.0.0.1, localhost and [::1] alone. Started with npm start -- --network, it answers to other machines, too.
served-other-name = This site answers to an address of this machine, or to its own name, alone. npm start says the address.

# While kits are still worked out after the start, above the catalogue.
served-waiting-title = Not all kits are here yet
served-waiting = { $known } of { $all } kits are worked out so far. The others follow, and a page that is gone to comes first.
served-waiting-list = { $count ->
    [one] One kit that follows
   *[other] { $count } kits that follow
  }
