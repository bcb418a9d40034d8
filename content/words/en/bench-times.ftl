### Times on the page “Work along”: how long she has worked, when to stop, what dries. Read at arm's length: keep phrases short.

# In place of the working time where it is not the first evening; $sitting is the part of it since the last long break.
bench-times-sitting = { $worked } ({ $sitting } this time)
# $leaf is a leaf in words, such as “p. 151 (leaf 87)”.
bench-stop-leaf = Stop at { $time }: about { $leaf }, { $count ->
    [one] { $count } leaf
   *[other] { $count } leaves
  } from here, { $by ->
    [own] at your pace
   *[estimate] by the estimate
  }.
bench-stop-no-leaf = Stop at { $time }: too soon for another leaf.
bench-stop-end = Stop at { $time }: all may be done by then.
bench-stop-past = You wanted to stop at { $time }.
# $step is a step in words, $time a time of day such as 14:35 or Monday 08:20, $left a time such as 22 min.
bench-drying = { $step }: dry at about { $time }, in { $left }.
# Spoken as something begins to dry.
bench-dries-spoken = Dry at about { $time }.
# $steps is a list of steps in words.
bench-dry = Dry now: { $steps }.

## In the menu
bench-stop-title = This evening
bench-stop-at = Stop at
bench-stop-clear = No set time
bench-stop-lead = The bench tells how far you come by then.
bench-tone = A quiet tone when glue is dry or it is time to stop
