import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import type { DistanceUnit } from '../../distance.ts';
import type { Marking } from '../marks/useMarking.ts';
import { ClubPad, SwingPad } from './ClubPad.tsx';
import type { BagClub } from './clubsOfBag.ts';
import { enterDistance } from './enterDistance.ts';
import { isOnGreen } from './green.ts';
import { LiePad } from './LiePad.tsx';
import { KnownByPad, MorePad, NotePad } from './MorePad.tsx';
import { NumberPad } from './NumberPad.tsx';
import type { NextBall } from './nextBall.ts';
import { PitchSheet } from './PitchSheet.tsx';
import { pitchOf } from './pitch.ts';
import { RestPad } from './RestPad.tsx';
import { StrikePad } from './StrikePad.tsx';
import { fill, knownBy, note, openSlot, pitch, type ShotForm } from './shotForm.ts';
import type { Asking } from './slots.ts';

interface Props {
  readonly form: ShotForm;
  readonly round: Round;
  readonly bag: readonly BagClub[];
  readonly last: Shot | null;
  readonly unit: DistanceUnit;
  readonly asking: Asking;
  readonly onChange: (form: ShotForm) => void;
  readonly onBall: (ball: NextBall) => void;
  readonly onOver: (result: 'picked up' | 'conceded') => void;
  /** How places are marked by satellite; null: not here. */
  readonly marking: Marking | null;
}

/** The keys of the slot that is open. */
export function ShotPad(props: Props) {
  const { form, round, bag, last, unit, asking, onChange, onBall, onOver, marking } = props;
  const { entry, slot } = form;
  const filled = (changes: Parameters<typeof fill>[1]) => onChange(fill(form, changes, asking));
  switch (slot) {
    case 'lie':
      return (
        <LiePad
          chosen={entry.lie}
          last={form.shotId === null ? last : null}
          onChoose={(lie) => filled({ lie })}
          onBall={onBall}
          onOver={onOver}
        />
      );
    case 'flag':
    case 'carry':
    case 'total':
    case 'cleared':
    case 'short of':
      return (
        <NumberPad
          key={slot}
          slot={slot}
          typed={form.typed}
          unit={unit}
          onType={(typed) => onChange({ ...form, typed })}
          onEnter={(typed) => {
            const entered = enterDistance(form, typed, unit, asking);
            onChange(entered.kind === 'entered' ? entered.form : { ...form, typed: '' });
          }}
          onChip={() => filled({ intent: 'chip' })}
        />
      );
    case 'flag by':
      return (
        <KnownByPad
          chosen={form.by}
          hasLaser={round.distanceDevices}
          onChoose={(by) => onChange(knownBy(form, by, asking))}
        />
      );
    case 'club':
      return <ClubPad bag={bag} chosen={entry.clubId} onChoose={(clubId) => filled({ clubId, swing: 'full' })} />;
    case 'swing':
      return (
        <SwingPad
          club={bag.find(({ id }) => id === entry.clubId)}
          chosen={entry.swing}
          onChoose={(swing) => filled({ swing })}
          onClubs={() => onChange(openSlot(form, 'club'))}
        />
      );
    case 'strike':
      return <StrikePad chosen={entry.strike} onChoose={(strike) => filled({ strike })} />;
    case 'pitch':
      return (
        <PitchSheet
          key="pitch"
          of="pitch"
          spot={pitchOf(entry)}
          unit={unit}
          onMark={(spot) => onChange(pitch(form, spot, isOnGreen(spot), asking))}
        />
      );
    case 'aim':
      return (
        <PitchSheet key="aim" of="aim" spot={entry.aim} unit={unit} onMark={(spot) => filled({ aim: { ...spot } })} />
      );
    case 'rest':
      return <RestPad entry={entry} onChoose={filled} onOpen={(slot) => onChange(openSlot(form, slot))} />;
    case 'more':
      return (
        <MorePad
          entry={entry}
          onNote={(changes) => onChange(note(form, changes))}
          onOpen={(slot) => onChange(openSlot(form, slot))}
          marking={marking}
        />
      );
    case 'note':
      return <NotePad note={entry.note} onNote={(text) => onChange(note(form, { note: text }))} />;
    case null:
      return null;
  }
}
