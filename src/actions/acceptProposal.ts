import { specOn } from '../golf/club.ts';
import { blankHole } from '../golf/newRound.ts';
import { proposalOf, proposedRoundId } from '../golf/proposal.ts';
import { type Round, roundSchema } from '../golf/round.ts';
import { type Shot, shotSchema } from '../golf/shot.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, refuse, written } from './outcome.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** Why a paper sheet was not taken over. */
export type AcceptRefusal = Gone | NotValid | { readonly kind: 'round by the Rules' };

/**
 * Takes a paper shot sheet that a coach typed in over into the golfer's own logbook: a closed casual round
 * with its shots, carries as typed. Shots of clubs that are not in the logbook stay without a club. The
 * review then counts as done. Taking it over again adds nothing.
 */
export function acceptProposal(keeper: Keeper, reviewId: string): Promise<Outcome<Round, AcceptRefusal>> {
  return write<Round, AcceptRefusal>(keeper, async (pen) => {
    const { db } = pen;
    const review = await db.reviews.get(reviewId);
    const proposal = review && proposalOf(review);
    if (!proposal) return gone;
    if ((await db.rounds.toArray()).some((round) => !round.closed && round.play === 'rules')) {
      return refuse({ kind: 'round by the Rules' });
    }
    const id = proposedRoundId(reviewId);
    const there = await db.rounds.get(id);
    if (there) return written(there);
    const clubs = new Map((await db.clubs.toArray()).map((club) => [club.id, club]));
    const holes = [...new Set(proposal.shots.map((shot) => shot.hole))].sort((a, b) => a - b).map(blankHole);
    const { date, course } = proposal;
    const round = valid<Round>(roundSchema, { id, date, course, play: 'casual', closed: true, holes });
    if (round.kind === 'refused') return round;
    const shots: Shot[] = [];
    const onHole = new Map<number, number>();
    for (const [i, { hole, clubId, swing, lie, strike, carry_m }] of proposal.shots.entries()) {
      const number = (onHole.get(hole) ?? 0) + 1;
      onHole.set(hole, number);
      const club = clubs.get(clubId);
      const shot = valid<Shot>(shotSchema, {
        id: `${id}.${i}`,
        roundId: id,
        hole,
        number,
        clubId: club ? clubId : null,
        specId: club ? specOn(club, date).id : null,
        swing,
        lie,
        strike,
        carry: carry_m === null ? null : { m: carry_m, by: 'typed' },
      });
      if (shot.kind === 'refused') return shot;
      shots.push(pen.stamped(shot.value));
    }
    const stamped = pen.stamped(round.value);
    await db.rounds.put(stamped);
    await db.closedShots.put({ roundId: id, shots });
    await db.done.put({ reviewId, at: pen.now });
    return written(stamped);
  });
}
