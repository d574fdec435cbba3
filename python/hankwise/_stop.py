"""Being stopped: a command says so in a word, even while the package is still being imported."""

import sys

TYPE_CHECKING = False
if TYPE_CHECKING:
    from types import TracebackType
    from typing import NoReturn

# 128 and the number of the signal, as a shell has it.
STOPPED = 130
_ENDED = 143


def _is_command() -> bool:
    """Tell whether `hankwise …` or `python -m hankwise …` was typed."""
    name = sys.argv[0].replace("\\", "/").rpartition("/")[2] if sys.argv else ""
    modules = zip(sys.orig_argv, sys.orig_argv[1:], strict=False)
    typed = any(pair in (("-m", "hankwise"), ("-m", "hankwise.cli")) for pair in modules)
    return typed or name in ("hankwise", "hankwise.exe", "hankwise-script.py")


def say_stopped() -> int:
    """Say that the command was stopped; gives its exit code."""
    print("\nhankwise: stopped", file=sys.stderr, flush=True)
    return STOPPED


def _without_traceback(
    kind: type[BaseException], error: BaseException, trace: "TracebackType | None"
) -> None:
    if issubclass(kind, KeyboardInterrupt):
        import os

        # Python itself would end by the signal, and not with a code.
        os._exit(say_stopped())
    sys.__excepthook__(kind, error, trace)


def _end(_number: int, _frame: object) -> "NoReturn":
    # A file that is being written is finished or removed first.
    sys.exit(_ENDED)


def install() -> None:
    """Stop as a command does."""
    import signal

    sys.excepthook = _without_traceback
    signal.signal(signal.SIGTERM, _end)


if _is_command():
    install()
