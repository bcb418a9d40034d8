### Estimated times, to the quarter hour.

hours-only = { $hours } h
hours-minutes-only = { $minutes } min
hours-and-minutes = { $hours } h { $minutes } min
