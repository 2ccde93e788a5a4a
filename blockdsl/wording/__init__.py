"""Every word that a maker reads in a step, in a language.

Takes:    facts: data without sentences.
Gives:    sentences.
Measures: lengths as the facts give them, written as the language writes them.
Reports:  nothing; a message that is missing or lacks an argument is a fault of ours and raises.
Does not know: pages, pictures, where a sentence is printed.

`messages` finds a message by its key; each language is a folder of Fluent files beside it, one file for each subject.
"""

from blockdsl.wording.document import facts_json
from blockdsl.wording.messages import LANGUAGES, Messages, messages, words_of
from blockdsl.wording.quilt import quilt_names, quilt_step_texts
from blockdsl.wording.quilt_names import QuiltNames
from blockdsl.wording.steps import step_texts
from blockdsl.wording.steptext import BOX, StepPart, StepText

__all__ = [
    "BOX",
    "LANGUAGES",
    "Messages",
    "QuiltNames",
    "StepPart",
    "StepText",
    "facts_json",
    "messages",
    "quilt_names",
    "quilt_step_texts",
    "step_texts",
    "words_of",
]
