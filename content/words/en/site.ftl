### Every page of the site: the frame around it, pages that stand in for others, feed and link previews.

site-skip = Skip to content
site-foot = Every measurement is worked out for the book each kit names.
# Read aloud before the links at the top of every page.
site-ways = Pages of this site
# Link at the foot of every page.
site-feed = Feed of new kits
# Name of the feed for programs that read feeds.
site-feed-title = { $site }: kits and classes
# Title of a page: its own heading and the site's name.
site-title = { $page } · { $site }

# Where an address leads nowhere.
site-missing-title = Not on the shelf
site-missing-heading = This page is not on the shelf
site-missing-text = There is nothing at this address. The page may have been moved or taken away, or a letter may be missing from the link.
site-missing-kits = All kits
site-to-catalogue = Go to the catalogue

# Where a page is asked for without network and is not kept on the device.
site-absent-title = Not on this device
site-absent-heading = Not on this device yet
site-absent-text = You are offline, and this page has not been opened on this device before. Kits that you have opened work offline; the catalogue marks them.
site-absent-again = Try this page again

# Describes a link preview's picture.
site-preview-picture = { $title }, a book folded into a picture, seen from the front

# Title of a feed's entry.
feed-entry = { $title }, version { $version }
feed-licence = Licence: { $licence }

# What a kit's instructions make, in data for search engines.
how-to-yield = 1 folded book
how-to-credit = Picture after { $work }, { $source }, licence { $licence }
# A caution beside a step: title and one sentence.
how-to-tip = { $title }. { $text }
