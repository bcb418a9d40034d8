### Why a file of progress at the bench, or what a browser has saved of it, cannot be used. Each is a whole sentence.

progress-not-json = It is not JSON: it may be cut short, or another kind of file.
progress-other-schema = It is not a progress file of this version: its schema is { $given }, not { $expected }.
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
   *[amount] a number of 0 or more
  }.
# In place of a value that is not there.
progress-missing = missing
# The place of the file itself.
progress-whole-file = The file
