### Why a file of pieces or of progress, or what a browser has saved of them, cannot be used. Each is a whole sentence.

progress-not-json = It is not JSON: it may be cut short, or another kind of file.
progress-other-schema = It is not a file of pieces or progress of this version: its schema is { $given }, not { $expected }.
progress-other-kit = It belongs to the kit “{ $kit }”, and this is “{ $wanted }”.
progress-other-fit = It belongs to this kit on another book or fit.
progress-twice = { $place } has leaf { $leaf } twice.
# $place is where it stands in the file, like ticks[0].
progress-wrong-value = { $place } is { $given }, but must be { $allowed ->
    [object] an object
    [list] a list
    [text] text
    [leaf] a whole number from { $least } to { $most }
    [thickness] a number above 0
    [count] a whole number of 0 or more
    [percent] a whole number from 0 to 100
    [id] 1 to 64 letters, digits and hyphens
    [slug] a kit’s name of small letters, digits and hyphens
    [instant] a date and time like 2026-11-29T20:15:00Z
    [short] text of at most { $letters } letters
    [notes] text of at most { $letters } letters
    [address] figures as in a page’s address, of at most { $letters } letters
   *[amount] a number of 0 or more
  }.
# In place of a value that is not there.
progress-missing = missing
# The place of the file itself.
progress-whole-file = The file
# $place is like pieces[2], $kit and $given are kits’ names.
progress-mixed-kits = { $place } is of the kit “{ $kit }”, but its progress is of “{ $given }”.
progress-piece-twice = { $place } has the id of a piece before it.
progress-too-many = It holds more than { $most } pieces.
