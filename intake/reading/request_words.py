"""The words of requests: key phrases, what may stand around them, how they are misspelt."""

from __future__ import annotations

from typing import Final

from intake.reading.result import CommandName
from intake.reading.words import words as words_of

__all__ = ["ALIAS", "ANSWERS", "FILLER", "GUESSED", "KEYS", "NOISE", "SEEING", "THINGS", "WEAK"]

KEYS: Final[dict[CommandName, str]] = {
    CommandName.SKIP: (
        "let's not|do something else|something else|leave it|let it go|don't worry about that one"
        "|no answer|"
        "leave it|leave it for now|leave it for later|leave that one|not right now|don't feel like"
        " it"
        "|leave this for later|leave that for later|leave it for later|save it for later|leave for"
        " later"
        "|skip|pass|next|next one|next question|move on|moving on|move along|go on"
        "|keep going|carry on|onward|not now|later|come back to|come back later"
        "|circle back|leave blank|leave it blank|proceed|continue|rather not|jump ahead"
        "|skip ahead|skip over|skip past|do that one later|go to the next|on to the next"
        "|go ahead to the next|no answer|don't want to answer|rather not answer"
        "|not answering|won't answer|refuse to answer|no comment|next please|another one"
        "|ask me something else|something else|go forward|forward|don't care"
        "|doesn't matter|do not care|put that off|get to that later|deal with that later"
        "|revisit|park that|park it|table that|hold that one|none of your business"
        "|different question|ask another|ask me another|skp|skipp|jump over|let's leave"
        "|bypass this|let's not do|let's not bother|don't do this one|no thanks|not this one"
        "|give this one a miss|leave this one|leave that blank|leave this blank"
        "|leave that one blank"
        "|leave this one blank|put nothing|put nothing down|hold off on|set that aside|set it aside"
        "|put a pin in|ask me later|ask me that later|get back to that|get back to that one"
        "|get back to it|get back to you|come back to it|come back to this|circle back to that"
        "|save that one|save that for later|not gonna bother|don't bother with|keep moving"
        "|keep it moving|on to the next one|what else you got|what else"
    ),
    CommandName.BACK: (
        "back|go back|goto previous|goto last|previous|prev|back up|backup|go backwards"
        "|go backward|back one|one back|rewind|step back|last question|previous question"
        "|question before|the one before|backtrack|back out|return to the last"
        "|return to previous|back a step|up one|one before|back to the last"
        "|back to the previous|backwards|go bak|bak|bck|to the last one|the last one again"
        "|last one again"
    ),
    CommandName.UNDO: (
        "last answer was wrong|that last answer was wrong|wrong one|oops wrong one|take that out"
        "|take it out|take that last one out|take the last one out|pull that out"
        "|undo|never mind|nevermind|nvm|scratch that|forget that|disregard|ignore that|delete"
        "|erase|strike that|cancel|take that back|take it back|take back|clear that|wipe that"
        "|retract|revert|ctrl z|didn't mean that|did not mean that|didn't mean to|wrong answer"
        "|throw that out|toss that|unsay|scratch it|scratch the last|scratch my last"
        "|scratch what|forget it|forget i said|forget what i|ignore my last|ignore the last"
        "|ignore what i|remove that|remove the last|drop that|oops|whoops|that was wrong"
        "|that's wrong|that was a mistake|that's a mistake|that's not right|pretend i didn't"
        "|i take it back|back that out|discard|unenter|nix that|cross that out|strike the last"
        "|strike it|strike my last|get rid of|scrap that|scratch this|kill that|made a mistake"
        "|mistake|forget the last|wipe the last|clear the last|clear my last|void that|undu"
        "|un do|scrap the last|scrap my last|scrap what|scrap it|scratch that one|lose that one"
    ),
    CommandName.WHY: (
        "explain why|tell me why|what are you going to do with|what are you gonna do with"
        "|what would you do with|what do you plan to do with|"
        "what's that got|what's it got|what has that got|got to do with|what's this got"
        "|why|how come|what for|what's that for|what is that for|what's it for|what is it for"
        "|what's this for|what is this for|does it matter|does that matter|does this matter"
        "|why does it matter|what difference|what difference does it make"
        "|what difference does that make|reason|the reason|who cares|what's the point"
        "|what is the point|point of|what's that good for|what is that good for|what's it good for"
        "|what good does that do|what's it matter|why bother|purpose|what good"
        "|what good is|what do you need that for|what do you need it for"
        "|what do you need this for|need that for|need to know that for|need this for"
        "|relevance|relevant|why's that|whys that|what does that have to do"
        "|what's that got to do|what has that to do|what does it have to do"
        "|what do you want that for|what do you want it for|what do you want this for"
        "|is that important|is this important|is it important|is that really necessary"
        "|is that necessary|is this necessary|is it necessary|do you really need"
        "|do you need that|do you really need that|what's it to you|so what"
        "|how is that relevant|what will you do with|what do you do with|wherefore"
        "|matter anyway|whats it for|whats that for|whats this for|whats the point|why ask"
        "|why on earth|why in the world|wy|y tho|what do you care|need it for|how's that help"
        "|how does that help|how does this help"
    ),
    CommandName.WHERE: (
        "where|where do i|where is|where's|where would|where should|where exactly|which spot"
        "|where at|what spot|where abouts|whereabouts"
    ),
    CommandName.HOW: (
        "show me how|tell me how|how do i tell|how can i tell|"
        "how do i|how do you|how would i|how should i|how can i|how|what's the trick|how to"
        "|best way|what tool|how am i supposed to"
    ),
    CommandName.TYPICAL: (
        "typical|what's typical|what's normal|what is normal|what's usual|what's common"
        "|what's average|what should it be|what should that be|what would be normal"
        "|what's a normal|what's a good|what do most|what's a typical"
    ),
    CommandName.HELP: (
        "give me a hand|need a hand|help|help me|halp|hlep|commands|options|menu|huh|what do you"
        " mean|what does that mean"
        "|what does this mean|what do that mean|what's that mean|what does it mean"
        "|don't understand|do not understand|don't get it|don't get|confused|lost me"
        "|you lost me|i'm lost|stuck|explain|what can i say|what can i type"
        "|what are my options|what are the options|instructions|not following|what's a"
        "|what is a|what is an|what's an|what are|what am i looking|what am i supposed"
        "|what are you asking|more info|clarify|elaborate|hint|example|define|eh"
        "|what should i say|what should i type|what do i type|what do i say|what do i do"
        "|what do you want|what do i put|what should i put|what am i supposed to put"
        "|not sure what you mean|not sure what you're asking|no idea what you mean"
        "|no idea what that is|don't know what that is|don't know what you mean"
        "|don't know what that means|don't know what a|not sure what that is|never heard of"
        "|what is that|what's that|what is it|what kind of answer|which one do you mean"
        "|meaning|in english|plain english|what now|what are you talking about"
        "|no idea what you're asking|don't know what you're asking|need help|i need help"
        "|manual|info|what counts|not sure what you want|what is this|what's this"
        "|how does this work|what am i meant|what am i meant to type|what am i meant to say"
        "|what goes here|i don't follow|don't follow|what can you do|what do these mean"
    ),
    CommandName.REPEAT: (
        "re ask|reask|you were saying|what were you saying"
        "|repeat|again|say again|say that again|come again|say what|pardon|pardon me"
        "|what was the question|what was that|what was the question again|one more time"
        "|what did you say|what did you ask|what'd you say|what'd you ask|didn't catch"
        "|didn't hear|did not hear|missed that|restate|rephrase|read back|read that back"
        "|ask again|excuse me|what's the question|what is the question|reread|re read"
        "|what were you asking|you said what|ask me again|once more|the question|what|wat"
        "|question again|what was it|run that by me|say it again|tell me again"
        "|what did you want|what did you want to know|what was it you|read it again"
        "|read that again|read me the question|show the question|couldn't hear|can't hear"
        "|give me that again|hit me again|what you say|what'd you want|what again"
        "|what was that again|what's that again|what is that again|wasn't listening"
        "|wasn't paying attention|zoned out|can you say that again|one more|run by me"
        "|run that question by me|run it by me|run this by me|by me again|by me one more time"
        "|go over that again|go through that again|go over it again|shoot that at me again"
        "|throw that at me again|say that one more time|didn't get that|didn't quite get"
        "|missed the question|missed it|reword|reword that|reword the question"
        "|put it another way|put that another way|read it to me|read me that|you cut out"
        "|you broke up|you're breaking up|lost you|couldn't make that out|what'd i miss"
    ),
    CommandName.SHOW: (
        "show|status|summary|summarize|recap|show me|what do you have|what have you got"
        "|where are we|where do we stand|list|what do you know|review|how far along|verdict"
        "|result|results|so far|what have i told you|what have i said|what did i say"
        "|what did i tell you|progress"
    ),
    CommandName.QUIT: (
        "that's a wrap|talk to you later|talk later|ttyl|get me off this|get me off"
        "|have to get going"
        "|gotta get going"
        "|need to get going|should get going|better get going|stop here|gotta stop here"
        "|have to stop here|imma call it|gonna call it|going to call it|calling it"
        "|that's it for me|that's all for me"
        "|that's it for today|that's it for now|"
        "gotta run to another call|have to run to another call|on another call|another call|got"
        " another call|quit|exit|bye|goodbye|good bye|stop|gotta go|gotta run|have to run|got to"
        " run"
        "|need to run|gotta bounce|gotta leave|have to leave|time to go|time's up"
        "|have to go|got to go|need to go|done|all done|i'm done|finished|i'm finished"
        "|log out|logout|log off|logoff|sign out|we're done|were done|we are done"
        "|head out|gotta head out|have to head out"
        "|done for the day|done for today|bail|call it a day|call it quits|stop here"
        "|stop the interview|stop the questions|goodnight|good night|i quit|that's all"
        "|that is all|abort|shut down|close|close the program|close the app|get me out"
        "|get out of here|go home|out of time|end|end it|end this|end the interview"
        "|end session|knock off|save and quit|save and exit|wrap up|wrap it up|peace out"
        "|see ya|see you|later gator|i'm out|heading out|pack it in|had enough|enough"
        "|enough of this|that's enough|leave|i'm leaving|shut it down|shut this down"
        "|kill it|no more|no more questions|stop asking|turn it off|turn this off"
        "|signing off|sign off|hang up|quitting|quti|qiut|exti|i'm outta here|outta here"
        "|finish later|pick this up later|pick it up later|pick this up tomorrow"
        "|finish this later|finish tomorrow|continue later|continue tomorrow|resume later"
        "|resume tomorrow|do this later|do the rest later|stop for now|that'll do"
    ),
    CommandName.FINISH: (
        "finish|give me the answer|enough questions|finish now|finish up|final answer|conclude"
        "|what's the verdict|just tell me the answer|that's all i know|that's all i have"
        "|that's everything"
    ),
}
"""What is said for each request; one phrase, one entry."""

FILLER: Final = words_of("""goofed messed mistyped give what's but and we're were off
        ok okay please pls plz um umm uh uhh hmm hm er well so let's lets can could would will you
        we i just hey now then want to like wanna should i'll we'll for me thanks thank thx right
        real quick quickly maybe alright all actually man dude buddy bud sir ma'am kindly lemme
        let gonna going go i'm im do no nah yeah yes ah oh sorry need have gotta got it this that
        one ones the question questions answer answers entry last previous thing here up again a
        an my of asking ask asked know matter even in on with them these those there over did does
        be is are was about number figure out first second any what want program app step screen
        everything wrote typed wanted had put entered gave some more today day until till back get
        see type good value moment instead too way come from important care use going your info
        information though really exactly time once mind hand looking point don't than whole stuff
        anyway anyways tho bit for now today tonight tomorrow after think i'd id rather guess it's
        its that's thats mean meant said say exactly measure measuring look find tell read reading
        as at by if you're youre you'd answering damn heck hell freaking stupid dang bro mate
        friend folks guys y'all us our how when while else please. sec second minute already don't
        dont didn't cant can't won't not any anything anymore next skip both another soon spot
        part bloody so many these been seriously kidding honestly hold wait phone dumb weird must
        anybody supposed particular piece job take house unit duct ducts word term words jargon
        help cause because want wants wanting needs needing know-how hang
        meant make difference lost nope ahead being nuts rats shucks doh er gimme give huh
        eh imma trouble bother too much curious whatever ugh argh geez jeez gosh meh bah yikes ope
        whoa
        whew sheesh oof
    """)
"""Words that may stand around a key phrase without changing it."""

ALIAS: Final = {
    "whats": "what's",
    "thatll": "that'll",
    "ill": "i'll",
    "ive": "i've",
    "cant": "can't",
    "wont": "won't",
    "thats": "that's",
    "dont": "don't",
    "didnt": "didn't",
    "im": "i'm",
    "u": "you",
    "ur": "your",
    "lets": "let's",
    "pls": "please",
    "plz": "please",
    "ya": "you",
    "yer": "your",
    "cuz": "because",
    "wha": "what",
    "wut": "what",
    "whut": "what",
    "wanna": "want",
    "r": "are",
    "isnt": "isn't",
    "doesnt": "doesn't",
    "couldnt": "couldn't",
    "wasnt": "wasn't",
    "its": "it's",
    "hows": "how's",
    "whys": "why's",
    "wheres": "where's",
    "whos": "who's",
    "questin": "question",
    "qestion": "question",
    "quesion": "question",
    "nxt": "next",
    "prevous": "previous",
    "previus": "previous",
    "repeet": "repeat",
    "pleas": "please",
    "pleez": "please",
}

ANSWERS: Final = frozenset(
    {
        "why not",
        "sure why not",
        "yes",
        "no",
        "y",
        "n",
        "done",
        "stop",
        "out",
        "back",
        "end",
        "close",
        "enough",
        "leave",
        "reason",
        "mistake",
    }
)
"""What is no request when a yes or no is asked for, or a choice."""

NOISE: Final = words_of("""
    even really exactly actually just please pls ok okay um uh hey well damn darn heck hell
    freaking bloody like man dude
""")
"""Words that are left out before a key phrase is looked for."""

WEAK: Final = words_of(
    """
        stuck lost what enough done leave close end stop pass forward back again list review info
        eh out bail manual hint example mistake reason purpose later finish show how where cancel
        delete huh result results status finished another confused missed close proceed continue
        next skip-it erase
    """
)
"""Key words that ask for something only in a short text ("its stuck in there" doesn't)."""

GUESSED: Final = (
    "skip",
    "undo",
    "quit",
    "exit",
    "repeat",
    "previous",
    "question",
    "back",
    "help",
    "next",
    "again",
    "finish",
    "nevermind",
    "scratch",
    "explain",
    "cancel",
    "please",
)

THINGS: Final = words_of("it it's its they they're that that's he she filter door")
"""What is stuck, where it isn't the person who is."""

SEEING: Final = words_of("see find reach get tell follow can't couldn't where which to at")
"""Words that make "the end" a place ("can't see the end")."""
