### The printed packet and the large-print table.

packet-title = { $title }: packet
packet-large-title = { $title }: large-print table
packet-seat-title = Seat { $seat } · { $title }: packet
# Above the kit's name on the cover.
packet-over = Leaflight packet
packet-over-seat = Leaflight packet · seat { $seat }
packet-version = version { $version }, { $day }
packet-licence = kit licence { $licence }
packet-credit = picture after { $work }, { $source }, { $licence }
packet-warnings = Before you begin
packet-reading = How to read a row of the pattern table
packet-gauge = Scoring gauge, true scale
packet-gauge-more = Strips of the gauge, true scale
packet-gauge-alt = Scoring gauge at true scale, with a line and a strip for each of the kit’s distances from the fore-edge
packet-merged = Merged strips
packet-merged-text = Too short to fold, so each was merged with the neighbour whose depth is nearest: leaf, from–to, level into level.
packet-merged-strip = leaf { $leaf }: { $place }, { $level } into { $into }
packet-strips = Marking strips, true scale: leaves { $first } to { $last }
packet-strips-part = Marking strips, true scale: leaves { $first } to { $last }, part { $part } of { $parts }
packet-strips-alt = Marking strips for leaves { $first } to { $last } at true scale
packet-templates = Templates, true scale: { $parts }
packet-templates-alt = Templates at true scale: { $parts }

packet-large-heading = { $title }: pattern table
packet-table-continued = continued, sheet { $sheet } of { $sheets }
# Above the table; $levels is a list.
packet-table-text = Marks from the head in { $units }; ›cut from the fore-edge. Levels: { $levels }.
packet-table-text-stepped = Marks from the head in { $units }; ›cut from the folded edge (after the whole leaf is folded at the { $level } line). Levels: { $levels }.
packet-table-level = { $number } { $name }
packet-table-level-line = { $number } { $name } (line { $line })
packet-table-done = Done
packet-table-folds = Folds, head to tail
packet-table-notch = notch { $notch }
packet-table-check = Check: { $leaves ->
    [one] { $leaves } leaf
   *[other] { $leaves } leaves
} and { $cuts ->
    [one] { $cuts } cut
   *[other] { $cuts } cuts
} on this sheet, { $sofar } of { $all } cuts so far.
packet-table-last = Last row: leaf { $leaf } ends the pattern.
packet-table-shaded = Shaded rows are checkpoints.

# The bar above a packet in the browser.
packet-paper = Paper
packet-print = Print this packet
packet-scale = at “actual size” or 100%
paper-a4 = A4
paper-letter = US Letter
paper-letter-short = Letter

# At the foot of every printed page, separated by dots.
packet-footer-version = version { $version }
packet-footer-book = { $leaves } leaves of { $height } × { $width }
packet-page-number = page { $page } of { $pages }
# Told in the browser where the book in the address does not fit.
packet-misfit = This kit does not fit the book in this address. { $why } Go back to the kit’s page and choose one of its offers.
