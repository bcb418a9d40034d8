/** The calendar file beside a class's page. */
export const CALENDAR = "class.ics";
