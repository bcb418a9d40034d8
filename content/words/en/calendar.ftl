### Classes in calendars and in the feed

# An entry of a calendar: the class and one of its sessions.
calendar-session = { $class }: { $session }
# Summary of a class in the feed; $date is the day of its first session.
feed-class = A class on { $date }, { $place }.
# A link to a file that calendars open.
class-calendar = Put the dates into your calendar

# $classes: names of folders.
front-a-class = the folder of another class, that takes nothing over from this one: { $classes }
# $date as it stands in the file: 2027-01-14.
front-announced-before = the class’s day, { $date }, or one before it
front-correct-announced = state the day on which you make the class known
