"""Requests by their form: a verb of asking, what it is done to, and when.

"Save that one for the end", "throw out what I just told you" and "finish the rest tomorrow" are no
fixed phrases: the verb, the thing of the talk (this question, my last answer, the number) and the
time each come in many words. A form has to take up the whole clause; the courtesies around it are
taken off first.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from intake.reading.result import CommandName

__all__ = ["formed"]

_COURTESY: Final = re.compile(
    r"^(?:(?:so|ok|okay|well|oh|hey|um|uh|and|but|now|then|hold on|hang on|wait|sorry|oops"
    r"|whoops|shoot|never ?mind|forget it"
    r"|crap|dang|damn|ugh|no|nah|yeah|please|alright|all right|man|dude|a sec|actually|just|maybe"
    r"|you know what|i think|i guess|i'd like|i would like|i wanna|i want|i need|i gotta|i have|we"
    r" need|we have|we gotta|we should|let's|let us|let me|lemme|can|could|would|will|may|might"
    r"|should"
    r"|we can|we'll|i'll|i will|i can|we could|you can|you could|you|we|i|to|go ahead and|better"
    r"|kindly"
    r"|mind if|do you mind|is it ok if|is it okay if|any way|any chance)\s+)+"
)
_TRAIL: Final = re.compile(
    r"(?:\s+(?:please|thanks|thank you|now|then|for now|for me|ok|okay|man|dude|sir|will you|would"
    r" you|if you can|if possible|real quick|a sec|a second|a minute|a moment|right now|real"
    r" fast|sorry|too"
    r"|somehow|again please|already))+$"
)
_ONE: Final = (
    r"(?:(?:this|that|the|these|those|my|a)(?: (?:whole|last|one|question|number|thing|part|bit"
    r"|stuff|section|item|info))*|it|them|one|question)"
)
_LATER: Final = (
    r"(?:later(?: on)?|last|some other time|another time|another day|tomorrow|(?:for|at|till"
    r"|until) (?:the"
    r" (?:very )?end|later(?: on)?|last|another time|some other time|tomorrow|after)|next time"
    r"|afterwards?"
    r"|in a bit|in a minute|after(?: this)?)"
)
_GIVEN: Final = (
    r"(?:what (?:i|we)(?: had)?(?: \w+)? (?:said|put|typed|told|gave|entered|wrote|sent|answered"
    r"|input)"
    r"|(?:that|this|the|my)(?: (?:very|whole|one|last|latest|previous|prior|first|recent))*"
    r"(?: (?:answer|answers|entry|number|value|figure|size|reading|one|thing|bit|message|response"
    r"|input|part|line|text|stuff|measurement))?|it|them|the last|my last|the previous)"
    r"(?: (?:i|we)(?: had)?(?: just)? (?:said|put|typed|told|gave|entered|wrote|sent|answered"
    r"|input))?"
    r"(?: (?:in|down|you|there|before|just now|a second ago|a minute ago|about that|about it))*"
)
_FORMS: Final = (
    (
        CommandName.SKIP,
        rf"(?:leave|save|do|answer|get|handle|come back (?:to|for)|get back to|hit|take|tackle"
        rf"|deal with|worry about|cover|look at|circle back to|return to|revisit|keep|ask"
        rf"(?: me)?) {_ONE} {_LATER}"
        rf"|(?:get|find|have|grab) (?:you )?{_ONE} (?:to you |for you )?{_LATER}"
        rf"|(?:{_ONE}|those|that ones?)(?:'s|'ll)? (?:can|could|should|needs to|(?:will|'ll"
        rf"|gonna|going to|is gonna|is going"
        rf" to|might|may)? ?(?:have|has|just) ?to|gonna|going to|will) wait(?: {_LATER}| (?:till"
        rf"|until|for)(?: \w+){{1,6}})?"
        rf"|{_ONE} wait(?: {_LATER})?"
        rf"|(?:do|go|go on|move on|get by|live|manage|get along|keep going|continue) without"
        rf"(?: {_ONE}| answering)?"
        rf"|(?:jump|hop|go|get|move|skip|head|advance|get me|take me|bring me|go on|move me|slide)"
        rf"(?: (?:ahead|on|over|right|straight|along|down))* to (?:the )?(?:next|following"
        rf"|whatever'?s next|what'?s next|another)(?: one"
        rf"| question| thing| part| section| page| screen| step| item)?"
        rf"|(?:what'?s|what is|give me|gimme|show me|bring on|ask me|hit me with|whats) (?:the"
        rf" )?next"
        rf"(?: one| question| thing)?"
        rf"|(?:skip|pass|bypass|omit|drop|leave out|pass on|pass over|jump|jump over|hop over"
        rf"|blow past)"
        rf"(?: over| past| on)? {_ONE}"
        rf"|(?:(?:don'?t|do not)(?= (?:wanna|want|care|need|feel|bother|have|got|worry))|not"
        rf" gonna|not going to|rather not|prefer not to|not(?= (?:doing|answering|dealing"
        rf"|messing)))"
        rf"(?: (?:wanna|want(?: to)?|care to|need to|feel like|bother|be|have time to|have time for"
        rf"|got time"
        rf" for|really|worry about|going to))*"
        rf"(?: (?:do|doing|answer|answering|deal with|mess with|bother with|say|get into|worry"
        rf" about"
        rf"|dealing with|messing with))?"
        rf" {_ONE}(?: (?:right now|today|now))?"
        rf"|(?:leave|mark) {_ONE} (?:blank|empty|open|out|off|unanswered|as unknown|for now|alone)"
        rf"|no time (?:for|to do) {_ONE}|(?:don'?t|do not) have (?:the )?time for {_ONE}"
        rf"|put {_ONE} (?:off|aside|to the side|on hold)(?: (?:for now|till later|until later"
        rf"|for later))?|mov(?:e|ing) (?:right |on )?along"
        rf"|keep (?:it |things )?(?:moving|rolling|going)(?: along)?",
    ),
    (
        CommandName.BACK,
        r"(?:go|jump|step|hop|move|head|get|take me|bring me|get me|back up|return|rewind|send me"
        r"|scroll|flip|switch|back)(?: (?:back|up|backwards?))*(?: (?:to|one|a|by))*(?: (?:the|my"
        r"|that))?"
        r" (?:last|previous|prior|earlier|one before|question before|before|other)"
        r"(?: (?:one|question|screen|page|step|thing|section|item|part))?(?: (?:this|that)(?:"
        r" one)?)?"
        r"|(?:go|scroll|jump|step|hop|get|take me|get me|bring me|need|back up|move|back)"
        r" (?:back|up|backwards?)"
        r"(?: (?:a|one|1|to the|by one|to that))*(?: (?:question|step|screen|page|one|sec"
        r"|second|bit"
        r"|minute|place|spot|slot|question|item))?"
        r"|(?:go |get |take me |bring me |get me |jump )?back (?:up )?to (?:the|that|what)"
        r" (?:one|question|part|thing|screen) (?:about|on|for|with|where|before|you|that|i"
        r"|we)\b(?: \w+){1,5}"
        r"|(?:re-?do|re-?answer|re-?visit|see|do|answer|change)"
        r" the (?:last|previous|prior) (?:one|question)(?: (?:again|over))?"
        r"|(?:see|show me|pull up|open) the (?:last|previous|prior|earlier) (?:one|question"
        r"|screen)"
        r"(?: again)?",
    ),
    (
        CommandName.UNDO,
        rf"(?:undo|delete|erase|remove|cancel|clear|wipe|scratch|strike|scrap|ignore|disregard"
        rf"|forget"
        rf"(?: about)?|discard|drop|toss|trash|kill|nix|void|retract|rescind|withdraw|dump|lose"
        rf"|pull"
        rf"|reverse|get rid of|throw (?:out|away)|take (?:back|out|off)|back out|cross (?:out|off)"
        rf"|strike out|wipe out|never ?mind(?: about)?|pay no attention to|blow away|revert)"
        rf" {_GIVEN}(?: (?:out|off|back|away))?(?: (?:from|off|out of) (?:the|my|your) (?:record"
        rf"|list|notes|answers|file|job|report|books))?"
        rf"|(?:take|throw|pull|toss|back|cross|strike|wipe|scratch|get) {_GIVEN} (?:out|off|back"
        rf"|away)"
        rf"|(?:don'?t|do not) (?:put|write|type|enter|add|send|save|keep|count|use|record|take"
        rf"|log|store|listen to) {_GIVEN}"
        rf"|(?:didn'?t|did not) mean to (?:send|type|hit|press|put|enter|say|submit|do) {_GIVEN}"
        rf"|(?:sent|hit|pressed|typed|entered|submitted|put) (?:that|it|send|enter|return|submit)"
        rf"(?: (?:in|down))? (?:by (?:accident|mistake)|too (?:soon|early|fast|quick)|accidentally"
        rf"|before (?:i was|i) \w+)"
        rf"|(?:accidentally|prematurely) (?:sent|hit|pressed|typed|entered) (?:that|it|send|enter)"
        rf"|(?:that|it|this|the last one|that last one|that one|my last answer|that answer)"
        rf" (?:doesn'?t|does not|didn'?t|shouldn'?t) count"
        rf"|pretend (?:i|we) (?:didn'?t|never) (?:say|type|put|send|enter) (?:that|it|anything)",
    ),
    (
        CommandName.REPEAT,
        r"(?:ask|say|read|tell|give|gimme|throw|run|show|hit|repeat|put|state|shoot)(?: (?:me|us"
        r"|that|it"
        r"|this|with|by|the|question|last|one|to|at))*"
        r" (?:again|once more|one more time|over(?: again)?|back to me|a second time|one more)"
        r"|(?:repeat|re-?read|re-?state|re-?phrase|re-?word|re-?ask|re-?send)"
        r"(?: (?:that|it|this|the question|the last part|yourself|what you said|what you asked"
        r"|the last one|that question))?(?: (?:again|once more|one more time|to me|for me))*"
        r"|(?:what was|what is|what's|whats|what were|what'd|what did|whatd)(?: (?:you|ya|u|the"
        r"|that|it"
        r"|we|just|last))+"
        r"(?: (?:say|ask|asking|want|question|saying|asking for|asking me|asking about|ask me|need"
        r"|wanting|on|want to know|want me to say))?(?: (?:again|just now|there|there again))?"
        r"(?<!that)(?<!it)"
        r"|(?:where|what) (?:were|was) (?:we|i)(?: (?:at|on|doing))*",
    ),
    (
        CommandName.QUIT,
        r"(?:end|close|stop|quit|exit|kill|shut down|abort|terminate|log out of|leave|wrap up"
        r"|get out of)"
        r"(?: (?:this|the|out|of|my|our))*"
        r" (?:session|call|interview|program|app|thing|chat|conversation|questionnaire|survey|job"
        r"|whole thing|questions|questioning|talk|whole deal)(?: (?:here|there|down|up|out|for"
        r" today))*"
        r"|save (?:this|it|everything)?(?: (?:and|n|then))? get me out(?: of here)?|log (?:me"
        r" )?(?:out|off)|sign (?:me )?(?:out|off)|(?:let|get) me out(?: of (?:here"
        r"|this))?"
        r"|(?:finish|do|continue|pick|resume|complete|come back to|get back to|wrap)"
        r"(?: (?:back|this|it|that|the rest|rest|up|the rest of (?:this|it)|them|on|with this))*"
        r" (?:tomorrow|tonight|another (?:day|time)|some other (?:time|day)|later today|next week"
        r"|in the morning|monday|after lunch|when i get (?:home|back)|when i have time"
        r"|when i got time|later on tonight)"
        r"|(?:pick|continue|finish|resume|come back|get back)(?: (?:this|it|up|back|on|to))+"
        r" later(?: on)?"
        r"(?: today)?(?<!come back to this later)(?<!come back to it later)(?<!get back to it"
        r" later)"
        r"(?<!get back to this later)(?<!get back to it later on)(?<!come back to this later on)"
        r"(?<!come back to it later on)"
        r"|save (?:this|it|everything|that|what (?:i|we)(?:'ve)? (?:have|got|did))?(?: (?:and|n"
        r"|then))?"
        r" ?(?:quit|exit|stop|close|come back|get back to it|pick (?:it|this) up|finish(?: it)?"
        r"|leave)"
        r"(?: (?:out|tomorrow|later|another day|some other time|here|on))*"
        r"|(?:quit|stop|stopping|quitting|knock off|knocking off|done|finished|signing off"
        r"|leaving|wrapping"
        r" up|heading out|all done|all set|calling it|call it)(?: (?:here|there|now|working|it))*"
        r" (?:for (?:the|to)?(?:\s?(?:day|night|today|tonight|now|afternoon|evening|week))|today"
        r"|tonight)"
        r"|that'?s (?:all|it|enough|as far as)(?: (?:i'?m|im|i am|i can|we'?re|i|we|i got|i've"
        r" got))"
        r" (?:doing|going|gonna do|going to do|do|got time for|have time for|want to do|can do"
        r"|answering)"
        r"(?: (?:for )?(?:today|tonight|now|the day))"
        r"|(?:i'?m |we'?re )?(?:done|finished|through|over it|tired of|sick of)(?: (?:with"
        r"|answering|of|doing))*"
        r" (?:this|these|questions|all this|these questions|this thing|your questions|the"
        r" questions)",
    ),
)


_LONGEST: Final = 90
_FIRST: Final = re.compile(
    r"\b(?:count|moving|leave|save|do|answer|get|handle|come|hit|take|tackle|deal|worry|finish"
    r"|cover|look|circle"
    r"|return|revisit|keep|ask|find|have|grab|check|wait|without|jump|hop|go|move|skip|head"
    r"|advance|slide"
    r"|next|pass|bypass|omit|drop|blow|not|won'?t|don'?t|mark|no time|step|back|bring|rewind"
    r"|send|scroll"
    r"|flip|switch|re-?\w+|see|show|pull|open|undo|delete|erase|remove|cancel|clear|wipe|scratch"
    r"|strike"
    r"|scrap|ignore|disregard|forget|discard|toss|trash|kill|nix|void|withdraw|dump|lose|reverse"
    r"|throw"
    r"|cross|never ?mind|pay|mean|sent|pressed|typed|entered|accidentally|pretend|say|read|tell"
    r"|give|run"
    r"|put|state|shoot|what|what's|what'd|whats|whatd|where|end|close|stop|quit|exit|shut|abort"
    r"|log|sign"
    r"|let|continue|pick|complete|wrap|knock|done|finished|signing|leaving|heading|calling|call"
    r"|stopping"
    r"|quitting|that'?s|through|tired|sick|terminate|prefer|rather|submitted|need|change)\b"
)


@cache
def _forms() -> tuple[tuple[CommandName, re.Pattern[str]], ...]:
    return tuple((name, re.compile(pattern)) for name, pattern in _FORMS)


def formed(clause: str) -> CommandName | None:
    """The request that a clause without digits is by its form, or None.

    Args:
        clause: Words with one space between, aliases put right ("what's", "don't").

    >>> formed("let's save that one for the end").value
    'skip'
    >>> formed("please remove what i just put in").value
    'undo'
    >>> formed("it leaves the plenum at the end") is None
    True
    """
    if len(clause) > _LONGEST or _FIRST.search(clause) is None:
        return None
    bare = _TRAIL.sub("", clause)
    forms = (bare, _COURTESY.sub("", bare, count=1))
    for name, form in _forms():
        if any(form.fullmatch(text) for text in forms):
            return name
    return None
