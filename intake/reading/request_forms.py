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
    r"|whoops|shoot|never ?mind|forget it|crap|dang|damn|ugh|no|nah|yeah|please|alright|all"
    r" right|man|dude|a sec|actually|just|maybe|you know what|i think|i guess|i'd like|i would"
    r" like|i wanna|i want|i need|i gotta|i have|we need|we have|we gotta|we should|let's|let"
    r" us|let me|lemme|can|could|would|will|may|might|should|we can|we'll|i'll|i will|i can|we"
    r" could|you can|you could|you|we|i|to|go ahead and|better|kindly|mind if|do you mind|is it"
    r" ok if|is it okay if|any way|any chance)\s+)+"
)
_TRAIL: Final = re.compile(
    r"(?:\s+(?:please|thanks|thank you|now|then|for now|for me|ok|okay|man|dude|sir|will you"
    r"|would you|if you can|if possible|real quick|a sec|a second|a minute|a moment|right now"
    r"|real fast|sorry|too|somehow|again please|already))+$"
)
_ONE: Final = (
    r"(?:(?:this|that|the|these|those|my|a)(?: (?:whole|last|one|question|number|thing|part|bit"
    r"|stuff|section|item|info))*|it|them|one|question)"
)
_LATER: Final = (
    r"(?:later(?: on)?|last|some other time|another time|another day|tomorrow|(?:for|at|till"
    r"|until) (?:the (?:very )?end|later(?: on)?|last|another time|some other time|tomorrow"
    r"|after)|next time|afterwards?|in a bit|in a minute|after(?: this)?)"
)
_GIVEN: Final = (
    r"(?:what (?:i|we)(?: had)?(?: \w+)? (?:said|put|typed|told|gave|entered|wrote|sent"
    r"|answered|input)|(?:that|this|the|my)(?: (?:very|whole|one|last|latest|previous|prior"
    r"|first|recent))*(?: (?:answer|answers|entry|number|value|figure|size|reading|one|thing"
    r"|bit|message|response|input|part|line|text|stuff|measurement))?|it|them|the last|my last"
    r"|the previous)(?: (?:i|we)(?: had)?(?: just)? (?:said|put|typed|told|gave|entered|wrote"
    r"|sent|answered|input))?(?: (?:in|down|you|there|before|just now|a second ago|a minute ago"
    r"|about that|about it))*"
)
_FORMS: Final = (
    (
        CommandName.SKIP,
        rf"(?:leave|save|do|answer|get|handle|come back (?:to|for)|get back to|hit|take|tackle"
        rf"|deal with|worry about|cover|look at|circle back to|return to|revisit|keep|ask(?:"
        rf" me)?) {_ONE} {_LATER}|(?:get|find|have|grab) (?:you )?{_ONE} (?:to you |for you"
        rf" )?{_LATER}|(?:{_ONE}|those|that ones?)(?:'s|'ll)? (?:can|could|should|needs to"
        rf"|(?:will|'ll|gonna|going to|is gonna|is going to|might|may)? ?(?:have|has|just) ?to"
        rf"|gonna|going to|will) wait(?: {_LATER}| (?:till|until|for)(?: \w+){{1,6}})?|{_ONE}"
        rf" wait(?: {_LATER})?|(?:do|go|go on|move on|get by|live|manage|get along|keep going"
        rf"|continue) without(?: {_ONE}| answering)?|(?:jump|hop|go|get|move|skip|head|advance"
        rf"|get me|take me|bring me|go on|move me|slide)(?: (?:ahead|on|over|right|straight"
        rf"|along|down))* to (?:the )?(?:next|following|whatever'?s next|what'?s next"
        rf"|another)(?: one| question| thing| part| section| page| screen| step| item)?"
        rf"|(?:what'?s|what is|give me|gimme|show me|bring on|ask me|hit me with|whats) (?:the"
        rf" )?next(?: one| question| thing)?|(?:skip|pass|bypass|omit|drop|leave out|pass on"
        rf"|pass over|jump|jump over|hop over|blow past)(?: over| past| on)? {_ONE}"
        rf"|(?:(?:don'?t|do not)(?= (?:wanna|want|care|need|feel|bother|have|got|worry))|not"
        rf" gonna|not going to|rather not|prefer not to|not(?= (?:doing|answering|dealing"
        rf"|messing)))(?: (?:wanna|want(?: to)?|care to|need to|feel like|bother|be|have time"
        rf" to|have time for|got time for|really|worry about|going to))*(?: (?:do|doing|answer"
        rf"|answering|deal with|mess with|bother with|say|get into|worry about|dealing with"
        rf"|messing with))? {_ONE}(?: (?:right now|today|now))?|(?:leave|mark) {_ONE} (?:blank"
        rf"|empty|open|out|off|unanswered|as unknown|for now|alone)|no time (?:for|to do)"
        rf" {_ONE}|(?:don'?t|do not) have (?:the )?time for {_ONE}|put {_ONE} (?:off|aside|to"
        rf" the side|on hold)(?: (?:for now|till later|until later|for later))?|mov(?:e|ing)"
        rf" (?:right |on )?along|keep (?:it |things )?(?:moving|rolling|going)(?: along)?",
    ),
    (
        CommandName.BACK,
        r"(?:go|jump|step|hop|move|head|get|take me|bring me|get me|back up|return|rewind|send"
        r" me|scroll|flip|switch|back)(?: (?:back|up|backwards?))*(?: (?:to|one|a|by))*(?:"
        r" (?:the|my|that))? (?:last|previous|prior|earlier|one before|question before|before"
        r"|other)(?: (?:one|question|screen|page|step|thing|section|item|part))?(?: (?:this"
        r"|that)(?: one)?)?|(?:go|scroll|jump|step|hop|get|take me|get me|bring me|need|back up"
        r"|move|back) (?:back|up|backwards?)(?: (?:a|one|1|to the|by one|to that))*(?:"
        r" (?:question|step|screen|page|one|sec|second|bit|minute|place|spot|slot|question"
        r"|item))?|(?:go |get |take me |bring me |get me |jump )?back (?:up )?to (?:the|that"
        r"|what) (?:one|question|part|thing|screen) (?:about|on|for|with|where|before|you|that"
        r"|i|we)\b(?: \w+){1,5}|(?:re-?do|re-?answer|re-?visit|see|do|answer|change) the"
        r" (?:last|previous|prior) (?:one|question)(?: (?:again|over))?|(?:see|show me|pull up"
        r"|open) the (?:last|previous|prior|earlier) (?:one|question|screen)(?: again)?",
    ),
    (
        CommandName.UNDO,
        rf"(?:undo|delete|erase|remove|cancel|clear|wipe|scratch|strike|scrap|ignore|disregard"
        rf"|forget(?: about)?|discard|drop|toss|trash|kill|nix|void|retract|rescind|withdraw"
        rf"|dump|lose|pull|reverse|get rid of|throw (?:out|away)|take (?:back|out|off)|back out"
        rf"|cross (?:out|off)|strike out|wipe out|never ?mind(?: about)?|pay no attention to"
        rf"|blow away|revert) {_GIVEN}(?: (?:out|off|back|away))?(?: (?:from|off|out of) (?:the"
        rf"|my|your) (?:record|list|notes|answers|file|job|report|books))?|(?:take|throw|pull"
        rf"|toss|back|cross|strike|wipe|scratch|get) {_GIVEN} (?:out|off|back|away)|(?:don'?t"
        rf"|do not) (?:put|write|type|enter|add|send|save|keep|count|use|record|take|log|store"
        rf"|listen to) {_GIVEN}|(?:didn'?t|did not) mean to (?:send|type|hit|press|put|enter"
        rf"|say|submit|do) {_GIVEN}|(?:sent|hit|pressed|typed|entered|submitted|put) (?:that|it"
        rf"|send|enter|return|submit)(?: (?:in|down))? (?:by (?:accident|mistake)|too (?:soon"
        rf"|early|fast|quick)|accidentally|before (?:i was|i) \w+)|(?:accidentally|prematurely)"
        rf" (?:sent|hit|pressed|typed|entered) (?:that|it|send|enter)|(?:that|it|this|the last"
        rf" one|that last one|that one|my last answer|that answer) (?:doesn'?t|does not|didn'?t"
        rf"|shouldn'?t) count|pretend (?:i|we) (?:didn'?t|never) (?:say|type|put|send|enter)"
        rf" (?:that|it|anything)",
    ),
    (
        CommandName.REPEAT,
        r"(?:ask|say|read|tell|give|gimme|throw|run|show|hit|repeat|put|state|shoot)(?: (?:me"
        r"|us|that|it|this|with|by|the|question|last|one|to|at))* (?:again|once more|one more"
        r" time|over(?: again)?|back to me|a second time|one more)|(?:repeat|re-?read|re-?state"
        r"|re-?phrase|re-?word|re-?ask|re-?send)(?: (?:that|it|this|the question|the last part"
        r"|yourself|what you said|what you asked|the last one|that question))?(?: (?:again|once"
        r" more|one more time|to me|for me))*|(?:what was|what is|what's|whats|what were|what'd"
        r"|what did|whatd)(?: (?:you|ya|u|the|that|it|we|just|last))+(?: (?:say|ask|asking|want"
        r"|question|saying|asking for|asking me|asking about|ask me|need|wanting|on|want to"
        r" know|want me to say))?(?: (?:again|just now|there|there again))?(?<!that)(?<!it)"
        r"|(?:where|what) (?:were|was) (?:we|i)(?: (?:at|on|doing))*",
    ),
    (
        CommandName.QUIT,
        r"(?:end|close|stop|quit|exit|kill|shut down|abort|terminate|log out of|leave|wrap up"
        r"|get out of)(?: (?:this|the|out|of|my|our))* (?:session|call|interview|program|app"
        r"|thing|chat|conversation|questionnaire|survey|job|whole thing|questions|questioning"
        r"|talk|whole deal)(?: (?:here|there|down|up|out|for today))*|save (?:this|it"
        r"|everything)?(?: (?:and|n|then))? get me out(?: of here)?|log (?:me )?(?:out|off)"
        r"|sign (?:me )?(?:out|off)|(?:let|get) me out(?: of (?:here|this))?|(?:finish|do"
        r"|continue|pick|resume|complete|come back to|get back to|wrap)(?: (?:back|this|it|that"
        r"|the rest|rest|up|the rest of (?:this|it)|them|on|with this))* (?:tomorrow|tonight"
        r"|another (?:day|time)|some other (?:time|day)|later today|next week|in the morning"
        r"|monday|after lunch|when i get (?:home|back)|when i have time|when i got time|later"
        r" on tonight)|(?:pick|continue|finish|resume|come back|get back)(?: (?:this|it|up|back"
        r"|on|to))+ later(?: on)?(?: today)?(?<!come back to this later)(?<!come back to it"
        r" later)(?<!get back to it later)(?<!get back to this later)(?<!get back to it later"
        r" on)(?<!come back to this later on)(?<!come back to it later on)|save (?:this|it"
        r"|everything|that|what (?:i|we)(?:'ve)? (?:have|got|did))?(?: (?:and|n|then))?"
        r" ?(?:quit|exit|stop|close|come back|get back to it|pick (?:it|this) up|finish(?: it)?"
        r"|leave)(?: (?:out|tomorrow|later|another day|some other time|here|on))*|(?:quit|stop"
        r"|stopping|quitting|knock off|knocking off|done|finished|signing off|leaving|wrapping"
        r" up|heading out|all done|all set|calling it|call it)(?: (?:here|there|now|working"
        r"|it))* (?:for (?:the|to)?(?:\s?(?:day|night|today|tonight|now|afternoon|evening"
        r"|week))|today|tonight)|that'?s (?:all|it|enough|as far as)(?: (?:i'?m|im|i am|i can"
        r"|we'?re|i|we|i got|i've got)) (?:doing|going|gonna do|going to do|do|got time for"
        r"|have time for|want to do|can do|answering)(?: (?:for )?(?:today|tonight|now|the"
        r" day))|(?:i'?m |we'?re )?(?:done|finished|through|over it|tired of|sick of)(?:"
        r" (?:with|answering|of|doing))* (?:this|these|questions|all this|these questions|this"
        r" thing|your questions|the questions)",
    ),
)


_LONGEST: Final = 90
_FIRST: Final = re.compile(
    r"\b(?:count|moving|leave|save|do|answer|get|handle|come|hit|take|tackle|deal|worry|finish"
    r"|cover|look|circle|return|revisit|keep|ask|find|have|grab|check|wait|without|jump|hop|go"
    r"|move|skip|head|advance|slide|next|pass|bypass|omit|drop|blow|not|won'?t|don'?t|mark|no"
    r" time|step|back|bring|rewind|send|scroll|flip|switch|re-?\w+|see|show|pull|open|undo"
    r"|delete|erase|remove|cancel|clear|wipe|scratch|strike|scrap|ignore|disregard|forget"
    r"|discard|toss|trash|kill|nix|void|withdraw|dump|lose|reverse|throw|cross|never ?mind|pay"
    r"|mean|sent|pressed|typed|entered|accidentally|pretend|say|read|tell|give|run|put|state"
    r"|shoot|what|what's|what'd|whats|whatd|where|end|close|stop|quit|exit|shut|abort|log|sign"
    r"|let|continue|pick|complete|wrap|knock|done|finished|signing|leaving|heading|calling|call"
    r"|stopping|quitting|that'?s|through|tired|sick|terminate|prefer|rather|submitted|need"
    r"|change)\b"
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
