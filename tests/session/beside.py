"""A process beside that works nothing out."""

from board.session.background import Answer, Request


class Beside:
    """Keeps what it is asked, and answers what a test puts in."""

    def __init__(self) -> None:
        self.asked: list[Request] = []
        self.answers: dict[type[Request], Answer] = {}

    def ask(self, request: Request, *, anew: bool = False) -> bool:
        self.asked.append(request)
        return True

    def answer(self, kind: type[Request]) -> Answer | None:
        return self.answers.pop(kind, None)
