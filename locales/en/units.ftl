### Signs of units, marks before lines and what lists need. Numbers, percents, dates and the words
### that join a list come from the language itself.
### Names of messages say how long they may be: toast-… at most 200 characters; button-…, answer-…,
### press-…, more-… and the like 64; command-… (the description of a command) 256.

# Signs of units, shown behind a number: 12.4 V
unit-volt = V
unit-ampere = A
unit-celsius = °C
unit-hour = h
unit-bar = bar
# Specific gravity of battery acid, read from a hydrometer
unit-gravity = SG
unit-ohm = Ω
# Turns of the engine in a minute
unit-rpm = rpm
unit-minute = min
unit-kilometre = km
# Weight of evidence
unit-deciban = dB

# Stands before a line that warns
mark-caution = Caution:

# A list with nothing in it
list-empty = none
