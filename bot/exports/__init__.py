"""What is kept, in the forms that others read: tables, JSON with its schema, FHIR, iCalendar."""
