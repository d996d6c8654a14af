"""What is answered to what was filled in: worked out in another process, or as it was worked out before."""

from __future__ import annotations

from dataclasses import dataclass, field

from walewright.serve import working
from walewright.serve.kept import KeptAnswer, KeptAnswers, KeptKey, KeptOffers, key_of
from walewright.serve.model import Offer, PageAnswer, Posted, ServedGarment, TakenFile
from walewright.serve.pool import Asker, Unfinished, WorkPool
from walewright.serve.sourced import texts


@dataclass(frozen=True)
class Answering:
    """`today` is an ISO date."""

    pool: WorkPool
    language: str
    today: str
    answers: KeptAnswers = field(default_factory=KeptAnswers)
    offers: KeptOffers = field(default_factory=KeptOffers)

    async def form(self, asker: Asker, garment: ServedGarment, given: Posted) -> PageAnswer | Unfinished:
        """The form with what was filled in, and the result, if it is known."""
        read = texts(garment)
        before = self.answers.get(key_of(garment.name, read, given)) if given else None
        if before is not None:
            return before.answer
        key, offer = self._offer(garment, read, given)
        found = await self.pool.work(asker, working.form, garment, given, self.language, offer)
        return found if isinstance(found, Unfinished) else self._offered(key, found)

    async def worked(self, asker: Asker, garment: ServedGarment, given: Posted) -> KeptAnswer | Unfinished:
        """The form and its result."""
        read = texts(garment)
        answer_key = key_of(garment.name, read, given)
        before = self.answers.get(answer_key)
        if before is not None:
            return before
        key, offer = self._offer(garment, read, given)
        found = await self.pool.work(asker, working.worked, garment, given, self.language, offer)
        if not isinstance(found, Unfinished):
            self._offered(key, found.answer)
            self.answers.put(answer_key, found)
        return found

    async def printed(
        self, asker: Asker, garment: ServedGarment, given: Posted, form: str, ticket: str
    ) -> TakenFile | PageAnswer | Unfinished:
        """The pattern as a file; where it is not proven, as `worked`."""
        found = await self.worked(asker, garment, given)
        if isinstance(found, Unfinished):
            return found
        if not found.packed:
            return found.answer
        return await self.pool.work(
            asker, working.printed, garment, found, self.language, today=self.today, form=form, ticket=ticket
        )

    async def kept(self, asker: Asker, garment: ServedGarment, given: Posted) -> TakenFile | PageAnswer | Unfinished:
        """A file that remembers what was filled in."""
        _, offer = self._offer(garment, texts(garment), given)
        return await self.pool.work(asker, working.kept, garment, given, self.language, offer)

    def _offer(self, garment: ServedGarment, read: tuple[str, ...], given: Posted) -> tuple[KeptKey, Offer | None]:
        """A form depends on nothing but the alternatives that are taken, and the size whose figures it shows."""
        asked = {name: text for name, text in given.items() if name == "size" or name.startswith("choose:")}
        key = key_of(f"{garment.name}?", read, asked)
        return key, self.offers.get(key)

    def _offered(self, key: KeptKey, answer: PageAnswer) -> PageAnswer:
        if answer.offer is not None:
            self.offers.put(key, answer.offer)
        return answer
