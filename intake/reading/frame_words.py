"""How people say that a value is denied, past, another house's, conditional, asked or wished."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.words import words

__all__ = [
    "ANOTHERS",
    "ASKED",
    "ASKED_THE",
    "DENIED",
    "HEDGED_NO",
    "IF",
    "IS_NOW",
    "NEGATIVE",
    "NOT_KNOWN_HERE",
    "NOT_KNOWN_IF",
    "OLD_ONE",
    "ONE_AND_OTHER",
    "OTHER_KIND",
    "OTHER_UNIT",
    "PAST",
    "PLANNED",
    "RATED",
    "REAL",
    "SPAN_OF_PLATE",
    "SWAPPED",
    "SWAPS",
    "TAKEN_BACK",
    "THE_DAY_BEFORE",
    "THIS_UNIT",
    "TOLD",
    "WAS",
    "WHOSE",
    "WISHED",
    "WRONG_BEHIND",
]

_IS: Final = r"(?:it'?s|it is|that'?s|that is|its|this is|they'?re|there'?s|there is|it was)"


DENIED: Final = re.compile(
    r"(?:\b(?:isn'?t|isnt|wasn'?t|wasnt|ain'?t|aint|not|never|nor)"
    r"|\b(?:can'?t|cannot|couldn'?t|wouldn'?t|won'?t|shouldn'?t) (?:possibly )?be"
    r"|\b(?:i )?doubt(?: that)?(?: " + _IS + r")?"
    r"|\bno way(?: that)?(?: " + _IS + r")?"
    r"|\b(?:don'?t|dont|do not|didn'?t) (?:think|believe|figure|reckon|see|have|find|got|use|want)"
    r"(?: that)?(?: " + _IS + r")?"
    r"|\bthere(?:'s| is| are|s) (?:no|not)|\b(?:anything but|nowhere near|far from|other than"
    r"|except(?: for)?|besides|apart from|instead of|rather than)"
    r"|\b(?:ignore|forget|disregard|scratch|(?:don'?t|dont) (?:write|put|use|count)(?: down)?))"
    r"(?: (?:a|an|any|the|that|really|actually|even|close to|anywhere near|near|at|of|like|about"
    r"|around|all|be|been|it|no|size|one of those|one of them|those|your|usual|standard|normal))*"
    r" ?(?:[$#+-]|\.)?$"
)
"""A denial right before the first number of its clause."""


HEDGED_NO: Final = re.compile(
    r"\bnot (?:exactly|quite|sure|certain|positive|100|measured|bad|that|only|just|much|less|more"
    r"|over|under|counting|including)\b|\bdon'?t (?:think|have) (?:so|the|my)\b"
)


PAST: Final = re.compile(
    r"\bused to (?:be|have|run|read|get|do|pull|move|say|measure|show)\b"
    r"|\b(?:originally|formerly|previously)\b|\bat one time\b|\bback (?:when|then|in the day)\b"
    r"|\bonce (?:was|had)\b|\bonce upon\b"
    r"|\bbefore (?:the |that |this |our |my )?(?:remodel\w*|renovation|addition|rebuild|swap\w*"
    r"|upgrade|change ?out|replacement|cleaning|repair|tune ?-?up|new \w+ (?:went|was|came))\b"
    r"|\bbefore (?:they|we|he|she|i|you|somebody|someone|it was|it got|that was)(?:'d)? (?:was "
    r"|were"
    r" |had |got |even )?(?:chang|replac|redid|redone|remodel|renovat|swapp|clean|fix|add|mov|took"
    r"|cut|upgrad|bought|put|tore|rais|lower|adjust)\w*"
    r"|\b(?:was|were|had|got|read|measured|showed|did|ran)\b.*\blast (?:year|month|summer|winter"
    r"|spring|fall|season|time|visit|owner)\b"
    r"|\blast (?:year|month|summer|winter|spring|fall|season|time|visit)(?:'s)?\b.*\b(?:was|were"
    r"|had|got|read|measured|showed|did|ran)\b"
    r"|\b(?:years?|months?|weeks?) (?:ago|back)\b.*\b(?:was|were|had|got|read|measured|showed)\b"
    r"|\b(?:was|were|had|got|read|measured|showed)\b(?! (?:here|there|out)\b).*"
    r"\b(?:years?|months?|weeks?) (?:ago|back)\b"
)


OLD_ONE: Final = re.compile(
    r"\b(?:the|our|my|that) (?:old|previous|former|first) (?:one|unit|duct|trunk|grille|return"
    r"|system|reading|setup|drop)s?\b.*\b(?:was|were|had|read)\b"
)


ANOTHERS: Final = re.compile(
    r"\b(?:neighbou?r(?:'?s)?|next[- ]door(?:'s)?|guy next door)\b"
    r"|\b(?:brother|sister|mother|father|mom|dad|son|daughter|friend|buddy|cousin|uncle|aunt"
    r"|parent|boss|in-?law)s?(?:(?:'s|'|s)? (?:house|place|home|unit|furnace|system|has|have|had)"
    r"|'?s (?:got|one|is|was))\b"
    r"|\b(?:another|a different|(?:the |my |our )?last|the other|your other) (?:house|job|site"
    r"|customer"
    r"|building|address|place)\b"
    r"|\b(?:the|that|my|our) other (?:one|unit|system|furnace|side|trunk|duct|grille|filter|return"
    r"|run|drop|branch)(?:'s| is| was| has| had| reads| says)\b"
    r"|\bthat(?:'s| is| was) (?:for )?(?:the|my|our) other (?:one|unit|system|side|house|trunk|duct"
    r"|grille|filter|run|job)\b"
    r"|\bthat(?:'?s| is| was) (?:for )?(?:the|my|our) (?:water heater|stove|dryer|fireplace|boiler"
    r"|range|pool heater|generator)\b"
    r"|\b(?:spare|in (?:the|my) (?:trash|truck|van|shop|box)|on the shelf|still in the box)\b"
)


ONE_AND_OTHER: Final = re.compile(
    r"(?P<one>\bone(?:'s| is| was| of them is)? [^;]*)\bthe other(?: one)?(?=\b)"
)
"""Two things of this house ("one is 16x8, the other one's 12x8")."""


IF: Final = re.compile(
    r"\bif (?:it|that|this|the|they|you mean|you'?re|we'?re talking|there|he|she|its|all)\b"
    r"(?!(?:'s| is)? (?:what you|helps|matters|counts|any help))"
    r"(?!.*\b(?:label|sticker|tag|plate|tape|print\w*|memory|book|marker|writing|gauge|meter)\b)"
    r"|\bunless\b(?! i'?m (?:wrong|mistaken|misreading|reading it wrong|blind|crazy))"
    r"|\b(?:it |that )?(?:all )?depends\b(?! on how (?:close|exact))"
)


WHOSE: Final = re.compile(
    r"\bor (?:maybe |wait,? |perhaps |possibly )?(?:that|it|this)(?:'s| was| is) (?:the|my|our"
    r"|on)\b"
)
"""Doubt of what the value is of ("16x8, or maybe that was the return")."""


NOT_KNOWN_IF: Final = re.compile(
    r"\b(?:know|tell|see|sure|say|idea|clue|check(?:ed)?|remember|look(?:ed)?|certain) if\b"
)
"""Not a condition, but that something isn't known."""


_BE: Final = r"(?:is|are|was|were|isn'?t|aren'?t|does|do|did|should|would|will|shall|could|can)"


ASKED: Final = re.compile(
    r"^(?:(?:so|wait|um|uh|hmm|well|ok|hey|and|or|but|sorry)[, ]+)*(?:"
    + _BE
    + r" (?:it|that|this|there|they|we|you|these|those)\b(?! (?:say|put|use|write"
    r"|go))|(?:is|are|would|does) [0-9.]+\S*(?: \w+){0,2} (?:normal|ok|okay|good|bad|high|low|too"
    r"|right|enough|standard|typical|common|big|small|plausible|possible|work|do)\b"
    r"|(?:why|how come|what if|who) )"
)


ASKED_THE: Final = re.compile(
    r"^(?:so |wait |um )*"
    + _BE
    + r" (?:the|my|our|a|an)\b.*\b(?:normal|ok|okay|right|enough|same)$"
)


TAKEN_BACK: Final = re.compile(
    r"^(?:no|nah|oh|wait|hmm|and|which|i know|although)*[, ]*(?:(?:"
    + _IS
    + r"|that|it|this|which|which is|i think "
    + _IS
    + r") )?(?:(?:is|was|seems?|looks?|sounds?"
    r"|must be|has to be|can'?t be|cannot be|isn'?t|ain'?t|not|doesn'?t|can not be) )?(?:(?:seem"
    r"|look|sound|be|sounds?|even|obviously|clearly|probably|just|totally|way|quite|all) )*"
    r"(?:the )?(?:wrong|not right|isn'?t right|can'?t be right|ain'?t right|right (?!now)"
    r"|incorrect|bogus|impossible|off|a lie|garbage|junk|nonsense|a typo|not true|not correct"
    r"|right$)(?: (?:number|one|side|unit|duct|tape|reading|page|size|line|filter))?(?: i think"
    r"| too| though)?[.! ]*$"
    r"|\b(?:don'?t|dont|do not|didn'?t|can'?t|wouldn'?t) (?:believe|trust|buy) (?:it|that|this|him"
    r"|her|them|the)\b"
)


WRONG_BEHIND: Final = re.compile(
    r"^[a-z0-9./'\" ]{0,14} (?:is|was|isn'?t|wasn'?t) (?:wrong|not right|right|incorrect|a typo"
    r"|off)$"
    r"(?<! is right)(?<! was right)"
)


NEGATIVE: Final = words("wrong incorrect bogus impossible garbage junk nonsense")


WISHED: Final = re.compile(
    r"\b(?:(?<!you )want(?! to (?:say|go with|put))|wants|wanted|would like|i'?d like|we'?d like"
    r"|would love"
    r"|hoping for|hope for"
    r"|hope it'?s|wish(?:ing)?|shooting for|aiming for|dream\w*)\b"
    r"|\b(?:(?:is|are|am|was) (?:going to|gonna|gunna)|gonna|going to|will|it'?ll|'ll) be\b"
    r"|\b(?:planning|thinking) (?:on|of|about) (?:a|an|putting|getting|going|replacing|doing)\b"
)


PLANNED: Final = re.compile(
    r"\b(?:supposed to|meant to|should(?:'ve| have)? be|should have|ought to|plans?|drawings?"
    r"|prints?|blueprints?|design\w*|spec\w*|advertised|quoted?|on paper|next size up|set up for"
    r"|configured for|would take|could take|file|records?|paperwork)\b"
)


RATED: Final = re.compile(
    r"\b(?:rated?|rating|table|chart|book|set ?point|set (?:to|at|for|on)|(?:plate|tag"
    r"|sticker|label"
    r"|manual|nameplate)(?:'s| says| shows| lists| is| calls for)|max(?:imum)?)\b"
)
"""What a table or plate says, beside a reading of what varies."""


REAL: Final = re.compile(
    r"\b(?:got|getting|gets|only|total|reading|showing|running|sitting at|measur\w*|actual\w*"
    r"|really"
    r"|in reality|(?:i'?m"
    r"|we'?re) (?:reading|getting|seeing|at)|i (?:got|get|see|read|have"
    r"|found|count\w*)|reads"
    r"|hood|added up|adds up|what'?s (?:there|hanging|here|in)|tape\w*|turned out|turns out|they"
    r" (?:put|used|installed|ran)|it'?s|its|it is)\b"
)


NOT_KNOWN_HERE: Final = re.compile(
    r"\b(?:don'?t|do not|no idea|no clue|not sure|can'?t (?:say|tell)|unsure)(?: know)? what"
    r" (?:it|this|this one|ours|the real|it'?s)\b"
    r"|\b(?:all new|(?:been|was|were|got) (?:changed|replaced|redone|swapped)|put in since|since"
    r" then)\b"
)
"""Beside what was planned: that nobody knows what really is."""


TOLD: Final = re.compile(
    r"\b(?:i|we) (?:thought|figured|assumed|guessed|expected|said|told you|wrote|gave you|had it)\b"
    r"|\b(?:was|were) (?:gonna|going to) (?:say|guess)\b|\b(?:was|is|were) (?:sure|convinced)\b"
    r"|\bi'?d have (?:guessed|said|bet)\b|\bwould have (?:guessed|said)\b|\btold you\b|^(?:said"
    r"|thought|figured)\b"
    r"|\b(?:customer|owner|homeowner|landlord|tenant|renter|salesman|seller|inspector|builder|he"
    r"|she"
    r"|they|guy|wife|husband|office|neighbou?r|caller) (?:swore|swears|said|says|thought|thinks"
    r"|claims?|claimed|told (?:me|us)|insists?|insisted|guessed|figured|wrote)\b"
)


SWAPS: Final = ("swapped", "replaced", "traded", "switched")


SWAPPED: Final = re.compile(
    r"\b(?:swapped|replaced|traded|switched)(?: out)? (?:the |an? |my |our |that"
    r" )?(?P<old>[^,;]{1,40}?)"
    r"(?: out)? (?:for|with) (?:the |an? )?(?:new )?(?P<new>[^,;]{1,60})"
)


WAS: Final = re.compile(
    r"\b(?:was|were|wasn't|had|ran|started (?:out )?(?:as|at)|came with)\b"
    r"|\bold (?:one|ones|motor|unit|furnace|filter|grille|duct|trunk|system|blower|return)s?\b"
)


IS_NOW: Final = re.compile(
    r"\bsold (?:em|them|him|her|us|me)\b|"
    r"\b(?:now|nowadays|today|currently|these days|at present|presently|as of)\b"
    r"|\bthis(?: one| unit| furnace)?(?:'s| is| are)* (?:a |an )?\d"
    r"|\b(?:this|new|present|current) (?:one|ones|motor|unit|furnace|filter|grille|duct|system)?"
    r"(?:'s|'re| is| are)* ?(?:a |an )?\d|\b(?:new|present|current) (?:one|ones|motor|unit"
    r"|furnace)\b"
    r"|\b(?:sold|swapped|replaced|changed|switched|upgraded|went)(?: out)? (?:it |them )?(?:for"
    r"|with|by"
    r"|to)"
    r"\b|\b(?:put|stuck|installed|threw) (?:a |an |the )?(?:new )?.{0,12}in\b|\bput in\b"
)


SPAN_OF_PLATE: Final = re.compile(
    r"\b(?:plate|tag|sticker|label|nameplate|it|unit|furnace|book)(?:'s)?"
    r" (?:allows?|range is|is rated(?: for)?|rates?|calls for|wants|takes)"
    r" (?:about |a )?[0-9.]+ ?(?:-|to|thru) ?[0-9.]+"
)
"""What a plate allows, told as a range beside what was measured."""


OTHER_UNIT: Final = re.compile(
    r"\b(?:the |that |my |our )?(?:upstairs|downstairs|basement|attics?|garage|addition|second|old)"
    r"(?: (?:unit|one|system|furnace|trunk|zone|side))?"
    r"(?:'s| is| has(?: a| an)?| had| does| do| blows| reads| runs| got| at)\b"
    r"|\b(?:water heater|stove|range|dryer|fireplace|boiler|generator|pool heater|airport"
    r"|downtown|town"
    r"|city|valley|base|summit)(?:'s| is| has| at)\b"
    r"|\battics?(?: is|'s)? (?=[0-9])"
    r"|\bthe (?:water heater|stove|dryer|fireplace|boiler|generator|airport)\b"
)

OTHER_KIND: Final = re.compile(
    r"\b(?:gas|manifold|suction|head|condenser|compressor|breaker|limit)"
    r"(?: (?:pressure|line|side|press))?(?:'s| is| was| at| reads| set)\b"
)
"""Something that has a figure of its own, whatever is asked ("0.4. gas side's at 3.5")."""


THIS_UNIT: Final = re.compile(
    r"\b(?:this|ours|here|you(?:'?re| are)? (?:want|ask\w*|meant?)|youre ask\w*|we(?:'re| are|"
    r" sit)|you asked"
    r"|furnace|house|static|the main|total|return|supply)\b"
)


THE_DAY_BEFORE: Final = re.compile(
    r"\b(?:was|were|had|read)\b.*\b(?:yesterday|last night|the other day)\b"
    r"|\b(?:yesterday|last night|the other day)\b.*\b(?:was|were|had|read)\b"
)
