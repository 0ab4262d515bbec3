### What the chat itself says. Words about machines, faults and checks are not here: they stand in
### flows/, beside the fact they belong to.
### Short sentences, everyday words: people read this standing beside a dead machine.

## The first minute

hello = Hello, this is { $shop }. I ask a few short questions about your machine, so that we know what may be wrong before anybody drives out.
consent = What you write and send is kept for this repair. Write "forget" to have it removed.
consent-link = What you write and send is kept for this repair: { $link }
noted = Noted: { $what }.
named-value = { $name } { $value }
named-answer = { $what }
ask-safety = First: is everybody safe?
ask-safety-how = Is anybody hurt? Do you see fire or smoke, smell fuel, or see a swollen or hissing battery?
answer-all-clear = All is safe
safety-unsure = Then look from where you stand before you touch anything. If you see, smell or hear any of it, keep away and write it at once.
ask-kind = What kind of machine is it?
known-again = { $machine } again?
known-again-fuel = { $machine }, { $fuel }, again?
answer-another-machine = Another machine
ask-fuel = What does it run on?
fuel-petrol = Petrol
fuel-diesel = Diesel
fuel-gas = Gas
fuel-unknown = fuel not known

## Questions and answers

answer-dont-know = I don't know
answer-none-of-these = None of these
answer-other = Something else
answer-nothing-more = Nothing more
answer-skip = Skip this
answer-done = Done
answer-cannot = I can't do that
answer-show = Show me
answer-more = More …
answer-noted = noted
answer-photo-got = photo received
answered = Your answer: { $answer }
about-more =
    { $count ->
        [one] About one more question.
       *[other] About { $count } more questions.
    }
about-more-rises =
    { $count ->
        [one] That answer opens a new way, so there is about one more question.
       *[other] That answer opens a new way, so there are about { $count } more questions.
    }
type-a-reading = Type the reading, like 12.4 { $unit }.
not-understood = I did not understand that. It is kept for the technician. Please press an answer, or say it in other words.
passed-unclear = I did not understand that either. I go on without an answer, and keep your words for the technician.
choose-one = Please press one of the answers below, or type it.
step-is-closed = That question is closed. Here is the one that is open.
here-we-are = This is where we are:
asked-again = Let's do that one again.
taken-back = I took that back.
nothing-before = There is nothing before this.
nothing-to-change = There is nothing to change there.
no-answers-yet = You have not answered anything yet.
which-answer = Which answer do you want to change?
answer-in-list = { $name }: { $value }
ask-meaning = What do you mean by that?
implausible = { $value } cannot be right here: I expect { $low } to { $high } { $unit }. Please look again, and tell me where you measured.
reading-unexplained = { $what }, { $value }: that does not go with the other readings. Nothing I know of gives all of them at once. Where were the probes? Please measure once more if you can, and write what you read.
reading-probes = Where did you hold the probes on the battery?
press-probes-post = On the posts
press-probes-clamp = On the clamps
press-probes-unknown = Not sure
probes-noted = Noted where you measured.
edited-kept = I have kept the changed message for the shop. To change an answer, write it again or press "More".
cannot-use-that = I can't read that kind of message. Please use words, a button or a photo.
unknown-command = I don't know that command. Just write what is wrong, or write "help".

## Trying things

try-again-now = Now try to start it once, from the seat. What happens?
try-safely = Out in the open. Sit on the seat. Brake on, out of gear, blades or PTO off, nobody near. Turn the key, count to ten, let go.
try-as-before = As before: from the seat, brake on, out of gear, PTO off, nobody near. Count to ten, let go.
starter-rests = The starter must cool for two minutes. Do not try before { $time }.
outcome-cured = It starts and runs
outcome-no-change = No change
outcome-changed = Something else happens now

## Photos, place, phone

ask-photo = Please send one photo: the battery with both cable ends, from close up.
ask-photo-battery = Please send one photo: the battery with both cable ends, from close up.
ask-photo-fuse = Please send one photo: the fuses with the lid off, from close up.
ask-photo-starter = Please send one photo: the starter with its cables, from close up. Engine off, key out.
ask-photo-fuel = Please send one photo: the fuel filter or the glass bowl, from close up. Open nothing.
ask-photo-plug = Please send one photo: the spark plug and its lead, as they are now. Pull nothing off.
ask-photo-controls = Please send one photo: the levers, the pedals and the key, as they stand now.
ask-plate = One photo of the plate with the type and serial number would help us bring the right parts. Send it here, or type the number.
file-kept =
    { $count ->
        [one] Thank you, I have kept that for the shop.
       *[other] Thank you, I have kept { $count } photos and files for the shop.
    }
photo-dark = That photo is too dark to see much.
photo-blurred = That photo is blurred.
photo-tiny = That photo is very small.
photo-if-you-can = If you can, take one more: go close, hold still, light from behind you. If not, go on. I have kept it.
ask-story = What happened just before? What work was done, what have you tried, what did you find?
ask-story-how = Write it in your own words, or send a voice note. The shop gets it too.
ask-urgency = How urgent is it?
urgency-high = Very: animals, crop or road wait
urgency-normal = In the next days
urgency-low = It can wait
ask-where = Where does the machine stand? Share the place, or write it: farm, field, gate.
ask-where-phone = Where does the machine stand, and on which number can we ring you? Tap below, or write it: farm, field, gate, number.
share-place = Share my place
place-noted = I have the place.
ask-phone = On which number can we ring you?
share-phone = Share my number
phone-noted = I have your number.
contact-not-own = That is another person's card. Please share your own number, or type it.
ask-equipment = What do you have at hand? Tick all you have.
equipment-meter = A volt meter
equipment-leads = Jump leads and a good battery
equipment-charger = A charger
equipment-second-person = Somebody to help
equipment-hand-tools = Spanners or a ratchet
equipment-ticked = ✓ { $thing }
equipment-none = None of these
equipment-all = That is all
ask-trip =
    { $count ->
        [one] Please look at this when you walk to the machine:
       *[other] One walk to the machine is enough. Please look at these { $count } things:
    }
ask-trip-how = Then come back here. I ask for each of them in turn.
trip-looked = I have looked
trip-there = I stand beside it now
trip-cannot = I can't go there

## What stands under the drawings

drawing-battery-posts = 1 the battery's post · 2 the clamp on it · 3 the cable
drawing-earth-strap = 1 the battery's minus post · 2 where its cable meets the frame · 3 the strap from frame to engine · 4 the engine
drawing-fuse-box = 1 the lid, pulled off · 2 a good fuse, its wire whole · 3 a blown fuse, its wire broken
drawing-stop-knob = 1 the knob pulled out: the engine is stopped · 2 the knob pushed in: the engine may run
drawing-solenoid = 1 the solenoid, the small drum · 2 the starter motor under it · 3 the thick cable on its stud · 4 the thin wire
drawing-place = The ring shows where it mostly is on a machine like yours. Look only: engine off, key out.

## The way out

more-choose = What do you want to do?
more-back = Go back one question
more-change = Change an earlier answer
more-pause = Pause
more-person = Talk to a person
more-runs = It runs again
more-stop = Stop, I need no help
more-return = Go on
answer-go-on = Go on
answer-person = Talk to a person
answer-open-again = Open it again
paused = Paused. Everything is kept. Press "Go on" or just write when you are ready.
stopped = Stopped. Case { $number } is closed. If you need us after all, open it again.
person-told = Ring { $phone }, or stay here: I have told { $shop } that you want to talk to somebody.
person-there = Somebody is there until { $time }.
person-away = Nobody is there now. Somebody is there again on { $time }.
person-on-call = If it cannot wait, ring { $phone } now.
person-nobody = Nobody of the shop is reading here yet. Please ring { $shop }: { $phone }.
runs-again = Good. I have written down that it runs again. What it was is not known, so it may come back. Case { $number } is closed.
reminder = You have not answered for a while. This is still open in case { $number }:
still-fine = Is the machine of case { $number } still fine?
answer-still-fine = Yes, it is fine
answer-came-back = No, it is back
still-fine-thanks = Thank you. That helps us to know what cured it.
came-back-told = I am sorry. Case { $number } is open again, and { $shop } is told.
came-back-for-shop = It is back: case { $number } is open again.
passed-on = I have passed that on to the shop.

## Danger

alarm-stop = Stop. Do not try to start it.
alarm-emergency = Ring { $number } now.
alarm-after = When nobody is in danger any more, press the button, or write it.
alarm-again = Still open: danger in case { $number }: { $flag }. Nobody has pressed "Seen" yet.
alarm-unread = Nobody of the shop has read this yet. If it cannot wait, ring { $phone }.
alarm-read = The shop has read this. Their number is { $phone }.
answer-safe-now = It is safe now, go on
alarm-for-shop = Danger in case { $number }: { $flag }. Please press "Seen" once you look after it.
operator-flag-seen = { $who } has read your message about the danger.

## What it may be

what-it-may-be = What it may be
chance-likely = { $cause }: likely, about { $chance }
chance-possible = { $cause }: possible, about { $chance }
chance-less-likely = { $cause }: less likely, about { $chance }
may-be-else = It may well be something that is not on my list.
do-not-buy-yet = Do not buy yet: { $part }. This is checked first: { $check }.
manual-first = Your machine's manual comes first. Leave anything you are not sure of to us.
what-next-told = Your case number is { $number }. { $shop } has all this now and will write to you here. Number to ring: { $phone }.
what-next-nobody = Your case number is { $number }. Nobody of { $shop } is reading here yet, so please ring { $phone } and say that number.
press-summary = Summary to pass on
summary-shop = With { $shop }, { $phone }
closed-thanks = Case { $number } is closed. Write again whenever a machine will not start.
operator-assigned = { $technician } of { $shop } has your case now.
solved-cause = Good, it runs. It was most likely this: { $cause }.
solved-closed = Case { $number } is closed. If it happens again, open it again or just write.
solved-for-technician = Case { $number } is closed: the operator got the machine running.
runs-for-now = Good, it runs. But this may only hide the trouble. Likely behind it: { $cause }.
runs-for-now-unknown = Good, it runs. But I cannot say why it would not before.
runs-and-kept = It may not start a second time, so switch it off where it can stay. { $shop } keeps the case.
operator-closed = Case { $number } is closed. It was: { $cause }. Please tell us if it comes back.

## Reasons

reason-for = for it: { $what }: { $state } (+{ $weight })
reason-against = against it: { $what }: { $state } (−{ $weight })
reason-for-together = for it, taken together: { $what } (+{ $weight })
reason-against-together = against it, taken together: { $what } (−{ $weight })
reason-member = { $name }: { $state }
reason-plain = You told me: { $what }.
reason-not = not { $state }
would-change-mind = What would change this most: { $what }: { $state }.

## The slip at the counter

slip-title = { $number } · { $machine }, { $fuel }
slip-who = From: { $who }
earlier-cases = This machine before: { $list }
earlier-case = { $number } ({ $day })
earlier-case-cause = { $number } ({ $day }: { $cause })
nobody-named = name not given
slip-complaint = Complaint: { $what }
symptom-unknown = not known yet
slip-urgency = Urgency: { $urgency }
slip-urgency-reason = { $because } ({ $sign }{ $points })
slip-flag-unseen = { $flag } – not seen by anybody yet
slip-flag-seen = { $flag } – seen
slip-person-wanted = Wants to talk to a person
slip-phone = Phone: { $phone }
slip-place = Place: { $place }
slip-pin = Place shared on the map
slip-files =
    { $count ->
        [one] One photo or file
       *[other] { $count } photos or files
    }
slip-causes = Likely causes
cause-line = { $cause }: { $chance }
slip-rest = Something else { $else } · nothing wrong any more { $nothing }
slip-plan = Plan
plan-step = { $what } ({ $minutes })
plan-call-help = Ring for help if none of this shows it
plan-if = if { $result }: { $next }
plan-more =
    { $count ->
        [one] … and one more step
       *[other] … and { $count } more steps
    }
plan-minutes = On the machine: about { $median }, nine times in ten under { $most }
slip-kit = To load
kit-part = { $part } – needed in { $chance } of such cases
kit-part-own = { $part } · { $own }
part-own = our number { $number }, in stock: { $stock }
part-own-shelf = our number { $number }, in stock: { $stock }, shelf { $shelf }
part-own-none = our number { $number }, none in stock
part-look-up-by = look it up by the serial number; it must fit in: { $fit }
part-look-up = look it up by the serial number
kit-tools = Tools: { $tools }
kit-covers = Enough for the repair in { $chance } of such cases
slip-interview = The operator is still answering
slip-waiting = Waiting for a decision
slip-assigned = With { $technician }
slip-on-site = { $technician } is on the machine
slip-looked-after = { $who } looks after it
slip-called-off = Closed by the operator
slip-ended = Closed: { $how }
slip-waited = Waiting since { $since }
slip-distance = By road about { $km }, { $minutes } each way
slip-pays = Pays: { $payer } – call-out charge not agreed yet
slip-pays-agreed = Pays: { $payer } – call-out charge agreed
slip-by-chat = Chance that it is solved without a visit: { $chance }
slip-asked = Asked the operator, no answer yet: { $question }
slip-booked = Visit booked: { $from } to { $until }
slip-second-visit = Second visit needed. To bring: { $what }
slip-took-in = Case { $other } is the same trouble
payer-own = the operator
payer-warranty = warranty
payer-contract = service contract
payer-comeback = nobody, it came back
end-solved-by-chat = solved by chat
end-visit = repaired on a visit
end-collected = machine collected or brought in
end-part-handed-over = part handed over
end-loan-machine = loan machine given
end-referred = sent on to somebody else
end-nothing-found = nothing found
end-called-off = called off
end-duplicate = the same trouble as another case
press-acts = More acts …
press-reopen = Open the case again
slip-closed = Closed. Cause: { $cause }
press-seen = Seen
press-noticed = I look after it
press-hand-over = Hand to a technician
press-take-back = Take back
press-files = Photos and files
which-technician = Who takes case { $number }?
no-technicians = There is no technician yet. Invite one with "invite".
handed-to = Handed to { $technician }
has-it-already = { $technician } has it already
nobody-has-it = Nobody has it
no-longer-there = That person is no longer in the shop
seen-already = Seen already
press-mark = Say what it shows
press-mark-else = Something else …
press-mark-danger = A danger
mark-what = What does the photo show?
mark-danger = Which danger does it show? The operator is told at once what to do.
mark-how = { $what }: how is it on the photo?
marked = Noted with case { $number }, seen on a photo: { $what }: { $state }.
press-unmark = Take that back
past-photo-marked = photo looked at
no-files = There are no photos or files
technician-load =
    { $count ->
        [one] { $technician } – one open job
       *[other] { $technician } – { $count } open jobs
    }
technician-fit = { $technician } · { $skills }: { $fit }
has-it-now = { $technician } has case { $number } now
done = Done
is-open = It is open already
acts-choose = Case { $number }: what next?
press-ask = Ask the operator
press-ask-photo = Ask for a photo
press-help = Give the operator something to try
help-which = What shall the operator of case { $number } try? It is put to them step by step, with its cautions.
help-none = There is nothing safe left that the operator of case { $number } could try.
help-choice = Cures { $cures }: { $what }
help-choice-hides = Cures { $cures }, hides { $masks }: { $what }
help-choice-only-hides = Only hides { $masks }: { $what }
help-over = That was tried already
help-danger = A danger is open in this case. First that.
help-given = Put to the operator
help-aloud = Case { $number } has no chat. Read aloud, and add what came of it:
shop-suggests = { $who } of the shop suggests to try this:
past-help-given = something to try given
press-heard = Add what was said on the phone
press-book = Book a visit
press-unbook = Take the booking back
press-pay = Who pays
press-pass = Pass on to another dispatcher
press-merge = Same trouble as another case
press-end = Close the case
press-history = History
press-machine = The machine: look, put right
press-slip = Show the slip
press-leave = Leave it
prompt-ask = Write what the operator of case { $number } shall be asked. It is passed on; nobody sees a number.
prompt-heard = Write what you heard about case { $number }. What I understand of it counts like an answer at second hand.
left-it = Left as it was.
call-how = Write what you hear behind the command: /call Miller, baler tractor, only clicks, lights bright, lower meadow
phone-case = Case { $number }, by phone
phone-read = Read aloud:
phone-options = { $options }
phone-answer = Write the answers in one line, in this order, with commas: yes, bright, I don't know.
phone-nothing = I understood nothing of that yet; it is kept.
phone-enough = There is nothing more worth asking on the phone.
press-sticker = Code to print for this machine
sticker-here = Print this and stick it on the machine. Whoever scans it begins here, and the machine is known.
sticker-too-early = What kind of machine it is is not known yet
sticker-scan = Does it not start? Scan this.
sticker-shop = { $shop }, { $phone }
press-start-link = Link to this case for the operator
start-link = Send this to the operator of case { $number }. It works once; photos and answers then come into the case:
shop-asks = { $who } of the shop asks:
shop-asks-photo = { $who } of the shop asks for a photo. Just send it here.
asked-operator = Passed on to the operator of case { $number }.
operator-replied = Case { $number }, answer to: { $question }
no-chat = The operator of case { $number } has no chat here. Ring them, and add what you hear.
book-when = When shall case { $number } be visited?
book-type = Or write it: 9-11, or 27.11. 14:30-16.
book-window = { $from } to { $until }
book-not-understood = I cannot read a time in that. Write it like 9-11, or 27.11. 14:30-16.
book-past = That time is over.
book-overlap = { $technician } is at case { $number } from { $from } to { $until }.
book-travel = Too little time for the road: { $technician } is at case { $number } from { $from } to { $until }.
booked = Booked: { $from } to { $until }
not-booked = Nothing is booked
visit-booked = Visit to case { $number }: { $from } to { $until }
visit-unbooked = Called off: visit to case { $number }, { $from } to { $until }
operator-arrived = { $technician } of { $shop } is at your machine now.
operator-booked = { $shop } comes { $from } to { $until }.
operator-unbooked = The visit { $from } to { $until } is called off. We will tell you of a new one.
merge-which = Which case is the same trouble as { $number }? Press it, or write its number.
merge-with = { $number } · { $machine } · { $who }
merge-unknown = There is no other open case { $number }.
merge-sure = Close { $number } as the same trouble as { $other }? What was said goes there as a note.
merge-yes = Yes, they are one
operator-merged = Case { $number } goes on as case { $other }.
pay-which = Who pays, and does the operator agree to the call-out charge?
pay-agreed = { $payer } – agreed
pay-open = { $payer } – not asked yet
pass-which = Who takes it over?
pass-nobody = There is no other dispatcher.
passed-to-you = Case { $number } was passed on to you.
end-which = How did it end?
technician-closed = Case { $number } was closed by the shop.
operator-ended = Case { $number } is closed: { $how }. Write again if you need us.
operator-reopened = Case { $number } is open again.
history-title = History of case { $number }
history-line = { $when }: { $what } ({ $who })
past-case-opened = opened
past-flag-raised = danger reported
past-flag-seen = danger seen
past-person-wanted = asked for a person
past-shop-saw = looked after
past-case-assigned = handed to a technician
past-case-taken-back = taken back
past-visit-set-out = on the way
past-visit-started = visit begun
past-step-undone = a step taken back
past-visit-cut-short = second visit needed
past-cause-confirmed = cause named
past-case-closed = closed
past-case-reopened = opened again
past-operator-asked = operator asked
past-operator-replied = operator answered
past-visit-booked = visit booked
past-visit-unbooked = booking taken back
past-payment-told = who pays
past-case-took-in = another case taken in
past-case-passed-on = passed on
past-operator-joined = operator came to the chat
case-is-closed = That case is closed.
note-kept = Note kept with case { $number }.

## The technician

sheet-title = Case { $number } · { $machine }
sheet-note = Note: { $note }
sheet-circuit = Starting circuit
sheet-told = What is known
sheet-record = What was found and done
sheet-too-early = Nothing is known yet that a sheet could say.
share-else = Something else
circuit-supply = Supply
circuit-control = Control
circuit-power = Power
point-cause = { $cause }: { $median }
look-alike = Not to be told apart yet: { $causes }.
look-alike-by = Not to be told apart yet: { $causes }. What tells them apart: { $check }.
brief-for = for it: { $what }
brief-against = against it: { $what }
brief-for-same = for it: the same
brief-against-same = against it: the same
seen-on-photo = { $what } (seen on a photo)
point-only = { $name }
point-readings-1 = { $name } – { $reading1 }
point-readings-2 = { $name } – { $reading1 } – { $reading2 }
point-readings-3 = { $name } – { $reading1 } – { $reading2 } – { $reading3 }
sheet-points = What the meter should show
press-causes = Picture of the causes
press-circuit = Circuit and readings
share-only = { $chance }
press-paper = Job sheet to print
press-report = Job report to print
press-set-out = I am on my way
operator-on-the-way = { $technician } of { $shop } is on the way to you.
told-operator = The operator is told
slip-set-out = { $technician } is on the way
press-begin = Start at the machine
technician-taken-back = Case { $number } was taken back by the shop.
expected-healthy = Healthy: { $median } ({ $low } to { $high })
expected-cause = { $cause }: { $median } ({ $low } to { $high })
step-left = left for now
late-reading = { $text }: which reading is that?
step-tools = Tools: { $tools }
cautions-as-before = as before – { $names }
step-parts = Parts: { $parts }
press-skip-step = Could not do it, next
press-found = I found the cause
press-undo = Undo the last step
press-sheet = Show the sheet
moved = { $cause }: { $before } → { $after }
plan-at-end = The plan has no step left. Name the cause, or ring for help.
remedy-runs = Done – it runs
remedy-no-change = Done – no change
remedy-skip = Could not do it
which-cause = Which was the cause?
cause-choice = { $cause } ({ $chance })
cause-other = Something else
ask-cause = Which was the cause?
ask-cause-words = Write in a few words what it was and what you did.
ask-ran = Did it run, and start again when you tried a second time?
ran-yes = Yes, all of it
ran-not-yet = Not yet
stays-open = Case { $number } stays open.
press-short = Something is missing: second visit
ask-missing = What is missing for the second visit? Press the part, or write it.
second-visit = Case { $number } stays open for a second visit. Bring: { $what }
operator-second-visit = The repair is not finished: a second visit is needed. To be brought: { $what }
ask-hand-back = Before you give it back: does the starter stay silent when it must?
hand-back-how = Keep clear of the machine. Turn the key for a moment in gear, then with the PTO on, then off the seat: the starter must stay silent each time.
hand-back-interlocks = what must keep it from starting in gear, with the PTO on and off the seat
hand-back-fine = It stays silent each time
hand-back-not-fine = No, it starts
hand-back-could-not = Could not test it
hand-back-stop = Do not give the machine back like this: it can start by surprise. Put it right first, then try again.
ask-hand-back-why = Why could it not be tested? One line; the operator is told.
hand-back-untested = Not tested: { $what }. Reason: { $why }. Take care until it is.
operator-done = What was done: { $what }.
record-title = For the record of case { $number }
record-cause = Cause: { $what } ({ $how })
record-done = Done: { $what }
record-minutes = On the machine: { $minutes }
record-minutes-choice = { $minutes }
record-used = Used: { $parts }
record-back = Brought back: { $parts }
record-correct = Press what is not right yet: minutes, parts used, how you know the cause.
record-photos = Photos that you send today still go to this case.
file-kept-with = Kept with case { $number }.
how-ran-after-this = it ran after this one act
how-measured = measured
how-several-at-once = several things at once
how-guess = a guess
ticked = ✓ { $label }
unticked = { $label }
press-another-cause = There was another cause too
which-causes = What else was wrong? Press every cause you found.
visit-closed = Case { $number } is closed. Thank you.

## People of the shop

not-allowed = That is not yours to press.
nothing-done = Nothing was changed.
no-member = You do not belong to the people of { $shop } any more, so this was not put to a case. To report a machine of your own, write "/new", or ring { $phone }.
taken-out = You do not belong to the people of { $shop } any more. Thank you. To report a machine of your own, just write.
technician-gone = { $technician } is not in the shop any more: case { $number } waits for a technician.
welcome-member = Welcome. You are now: { $role }.
link-used-up = That link is used up or too old. Please ask for a new one, or ring { $phone }.
role-owner = owner
role-dispatcher = dispatcher
role-technician = technician
invite-which = Who is the new link for?
invite-link = Link for a new { $role }
invite-once = It works once, within seven days. Send it only to the person it is for.
people-list = People of the shop
people-one = { $name } – { $role }
list-calls =
    { $count ->
        [one] One open call
       *[other] { $count } open calls
    }
list-jobs =
    { $count ->
        [one] You have one job
       *[other] You have { $count } jobs
    }
no-calls = No open calls.
no-jobs = You have no jobs now.
no-find = No case holds these words.
find-what = Write what to look for: "/find miller baler". A number, a name, a machine, a place or a word.
list-find =
    { $count ->
        [one] One case found
       *[other] { $count } cases found
    }
list-new = ● { $label }
list-urgent = ! { $label }
list-closed = ✓ { $label }
press-next-page = Next page
member-what = What shall change for { $name }?
press-make-role = Make them { $role }
press-remove = Take { $name } out of the shop
remove-sure = Take { $name } out of the shop? Their open cases go back to the counter; only a new link brings them back.
remove-yes = Yes, take them out
member-changed = Done. It counts from now on.
report-title = { $open } open, { $closed } closed
report-end = { $end }: { $count }
report-by-chat = Solved by chat: { $share } of { $count } ({ $low } to { $high })
report-by-chat-none = Solved by chat: nothing closed yet
report-first-visit = Fixed on the first visit: { $share } of { $count } ({ $low } to { $high })
report-first-visit-none = Fixed on the first visit: no visit closed yet
report-second-trips = Visits that ended without the repair: { $count }
report-missing = { $part } missing: { $count }
report-minutes = Minutes on the machine: { $taken }, foreseen { $foreseen } (medians of { $count }); not longer than foreseen at most: { $within }
report-comebacks = Came back within { $days } days: { $count }
report-causes = Causes found
report-cause = { $cause }, { $machine }: { $count }
report-calibration = Were the percentages right? Outcomes: { $count }
report-bin = said { $claimed }, was so { $held } of { $count }
press-table-cases = Cases as a table
press-table-rates = What was learned as a table
list-case = { $number } · { $machine }
list-case-alarm = Danger: { $number } · { $machine }
stray-dispatcher = To act on a case, press a button under its slip: "calls" lists them. To report a machine of your own, write "/new".
stray-technician = You have no open job. "jobs" lists them. To report a machine of your own, write "/new".
counter-here = Slips of new cases will come to this group from now on.
group-refused = I talk about cases only in the shop's own group and in private chats.

hand-all-none = You look after no open case.
hand-all-who =
    { $count ->
        [one] Who takes over the one case that you look after?
       *[other] Who takes over the { $count } cases that you look after?
    }
hand-all-yours =
    { $count ->
        [one] { $who } has handed one case to you:
       *[other] { $who } has handed { $count } cases to you:
    }
hand-all-done =
    { $count ->
        [one] { $who } looks after your one case now.
       *[other] { $who } looks after your { $count } cases now.
    }
duty-now = { $who } has the call-outs until { $until }.
duty-nobody = Nobody has the call-outs now: dangers are told to everybody at the counter.
duty-next = { $who }: { $from } to { $until }
duty-what = Whoever has the call-outs is told of dangers at any hour, also in the quiet hours.
duty-how-long = For how long shall { $who } have the call-outs?
duty-typed = Other hours, typed: /duty { $who } 17:00-22:00 – /duty { $who } 27.11. 17:00 - 30.11. 07:00
duty-span = { $from } to { $until }
duty-set = { $who } has the call-outs: { $from } to { $until }.
duty-yours = You have the call-outs: { $from } to { $until }. You are told of dangers at any hour.
duty-ended = Nobody has the call-outs from now on.
press-duty-nobody = Nobody from now on

## Help and settings

help-operator = { $name }: tell me what your machine does, and I find out what may be wrong. You can also ring { $phone }.
help-technician = You are a technician of { $name }. I give you the cases that are handed to you.
help-dispatcher = You are at the counter of { $name }. New cases come here as slips.
help-owner = You run { $name }. New cases come here as slips.
help-command = /{ $name } – { $what }
command-new = report a machine that will not start
command-person = talk to a person
command-help = what I can do
command-language = choose the language
command-forget = remove what is kept of you
command-export = get a copy of what is kept of you
command-machines = your machines
command-jobs = your jobs
command-calls = open calls
command-call = note a phone call: /call Miller, baler tractor, only clicks
command-find = look for a case
command-handover = hand your cases to another dispatcher
command-duty = who has the call-outs
command-report = what the cases add up to
command-invite = invite somebody to the shop
command-people = who belongs to the shop
command-start = begin
language-which = Which language?
language-set = From now on in this language.
language-offer = Shall I go on in { $language }?
language-offer-yes = Yes, in { $language }
language-offer-no = No, in { $language }
language-en = English
language-es = Español
language-de = Deutsch
export-here = Here is everything that is kept of you.
own-machines = Your machines. Press one to see it or to change it.
own-machines-none = No machine is kept for you yet. It is kept once you have reported one.
own-machine-gone = That machine is not on your list any more.
own-machine-fuel = Runs on: { $fuel }
own-machine-volts = Battery system: { $volts }
own-machine-serial = Serial number: { $serial }
own-machine-cases = Cases so far: { $list }
own-machine-name = Change its name
own-machine-plate = Write its serial number
own-machine-kind = It is another kind of machine
own-machine-other-fuel = It runs on: { $fuel }
own-machine-other-volts = It has { $volts }
own-machine-out = Take it off my list
own-machine-write-name = Write what you call this machine.
own-machine-write-plate = Write the serial number as it stands on the plate.

## Words that can be written in place of a command; several stand with commas between them.

word-new = new case, new machine
word-help = help
word-language = language
word-forget = forget, forget me
word-export = export, my data
word-machines = my machines
word-pause = pause, wait, later, in a minute
word-change = change, change an answer
word-runs = it runs again, it started again, it started again by itself, it runs now, it is running again
word-all-clear = all good, all is good, all safe, everything is safe, everything is fine, all fine, all ok, all okay, all clear, we are safe, we're safe, we are all safe, we are fine, we're fine, everyone is safe, everybody is safe, everyone is fine, everybody is fine, everyone is ok, everybody is ok, yes everybody is safe, yes everyone is safe, yes all safe, yes all good, yes we are, yes, safe, i'm fine, i am fine, i'm safe, i am safe, fine, ok, okay, no danger, no danger here, nothing like that, none of that, nobody hurt, nobody is hurt, no one hurt, no one is hurt, nobody, all gud, its all gud, all save, everybody is save, everyone is save, nothing, nothing here, nothin
word-dont-know = i don't know, don't know, dont no, i dont no, dunno, idk, no idea, no clue, not sure, can't tell, can't say, don't remember, not shure
word-skip = skip, skip it, can't, cannot, can not, i can't, i cannot, can't do that, no, nope, no photo, no picture, no phone, not now
word-safe-now = safe now, it is safe now, it's safe now, it is safe, all safe now, all good now, all clear now, danger over, the danger is over, it is over, it's over, it is out, go on
word-none-of-these = none of them, none, none of those, not any of these, neither, it is not there, not in the list, not on the list, nothing of that
word-places = one, two, three, four, five, six
word-jobs = jobs
word-calls = calls
word-call = call
word-find = find
word-report = report
word-duty = duty
word-invite = invite
word-people = people
word-handover = handover, hand over

forget-sure = Remove everything that is kept of you?
forget-what = Your name, number, place, words and photos go. What was found out about the machine stays, without your name.
forget-yes = Yes, remove it
forget-no = No, keep it
forgotten = Done. Nothing of you is kept any more, but this chat on your own phone.
apology = Something went wrong here. What you sent is kept, and somebody will look at it.

## What the bot says of itself before anybody has written

description = A machine will not start? Write what it does, or send a photo. I ask a few short questions, find out what may be wrong, and tell the workshop what to bring.
description-short = Tells you and the workshop what may be wrong with a machine that will not start.
