### The plan of a class's evenings: what comes when, where each seat should be, who waits and who helps. It stands in the teacher's packet and, in part, on seats' pages.

evening-order = Running order
evening-time = Time
evening-what = What
evening-settle = Settle in: seats, books, cautions
evening-work = Work at the books
evening-work-on = Work on
evening-pause = Pause
evening-catch-up = Free for seats that are late
evening-tidy = Count tools, tidy, lay wet things flat
# Where no time of day is stated: minutes since the session began.
evening-minute = { $minute } min
# $target is where the seat should be: "12 of 140 leaves, up to leaf 22".
evening-at-pause = At the pause: { $target }.
# $from and $to are names of sessions. $dries is a time: "12 h".
evening-glue-and-hang = Glue the frame in “{ $from }” and hang the door in “{ $to }”. It dries for { $dries }.
evening-glue-and-hang-once = Glue the frame and hang the door in “{ $from }”. It dries for { $dries }.
evening-hang-at-home = Glue the frame in “{ $from }” and hang the door at home. It dries for { $dries }.
evening-glue-at-home = Glue the frame and hang the door at home. It dries for { $dries }.
# $plan is one of the sentences above, $seats names seats: "seats 2 and 8".
evening-drying = { $plan } This is for { $seats }.
evening-tools = Tools to share
# $tools is a list of tools with how many there are.
evening-shared = There are { $tools }. Seats take turns: who comes first has them first.
evening-no-waits = By this estimate, nobody waits.
# $waits is a list: "seat 3: 12 min".
evening-waits = By this estimate, some wait: { $waits }. The times above count it.
evening-wait = seat { $seat }: { $minutes }
evening-shared-tool = { $count } × { $tool }
evening-glue-gun = { $count ->
    [one] glue gun
   *[other] glue guns
 }
evening-pairs = Who sits beside whom
evening-pairs-note = A quick seat beside a slow one can lend a hand. Times are estimates.
# $ahead is a time: "1 h 30 min".
evening-pair = Seat { $helper } beside seat { $helped }: done about { $ahead } before it.
# $session is the name of a session, $time a time of day or "35 min".
evening-pair-from = Seat { $helper } beside seat { $helped }: done about { $ahead } before it, in “{ $session }” at { $time }.
