### The guide: pages that explain the program to makers, readers and teachers. The pages themselves stand in content/guide.

guide-title = Guide
guide-summary = How to measure a book, make a kit, work along, hold a class, print and publish.
guide-lede = From a book on the shelf to a finished picture: read the chapters in order, or look up what you need.
guide-chapters = Chapters
guide-reference = Reference
# The list of the guide's pages, beside each of them.
guide-pages = Pages of the guide
# The list of a page's sections.
guide-on-this-page = On this page
# Links to the pages before and after this one.
guide-neighbours = Before and after
guide-previous = Before: { $title }
guide-next = Next: { $title }
# Link at the top of every page.
guide-link = Guide

# Under a drawing; $kit is the title of a kit of the site.
guide-figure = Drawn for the book of { $kit }.

## Tables of keys

guide-key = Key
guide-meaning = Meaning
guide-allowed = Allowed
guide-usual = Left out
guide-required = required
guide-none = none

## What is allowed for a key. Numbers stand as they are typed.

guide-length = length, { $least } to { $most } mm
guide-number = { $whole ->
    [yes] whole number
   *[no] number
}
# $number is the message above, with the measure where there is one.
guide-number-between = { $number }, { $least } to { $most }
guide-number-from = { $number }, { $least } or more
guide-number-above = { $number } above { $above }
guide-number-above-most = { $number } above { $above }, up to { $most }
guide-degrees = degrees
guide-seconds = seconds
guide-minutes = minutes
guide-text = text
guide-text-most = text, up to { $most } characters
guide-day = day as YYYY-MM-DD
guide-address = web address
guide-flag = true or false
# A link to the table of these keys.
guide-keys = keys of its own
guide-list = list
guide-list-most = list of up to { $most }
guide-list-between = list of { $least } to { $most }
guide-list-exactly = list of { $most }
# What each thing of a list is follows.
guide-each = each:
# Names that a key takes, each with a value: the names follow.
guide-names = any of these names:
guide-own-names = names of your own

## What is wrong with a page of the guide

guide-rename = rename the file
guide-reference-field = reference
guide-figure-field = figure
# $names as they are typed.
guide-directives = one of these names: { $names }
