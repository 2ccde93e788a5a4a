"""Work that other processes can find by its name."""

import multiprocessing
import os


def doubled(number: int) -> int:
    """Twice the number; three is too hard."""
    if number == 3:
        raise ValueError("three is too hard")
    return 2 * number


def fatal_elsewhere(number: int) -> int:
    """The number; whatever process was started for it dies."""
    if multiprocessing.parent_process() is not None:
        os._exit(9)
    return number


def where(number: int) -> int:
    """The process that does the work."""
    del number
    return os.getpid()
