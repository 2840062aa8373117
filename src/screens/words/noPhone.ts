/** Every text of the way without a phone: printed before the round, entered after it. */
export const noPhoneWords = {
  phones: 'Phones',
  choices: { yes: 'Phones allowed', no: 'No phones here' },
  title: 'Without a phone',
  before:
    'Print these before the round and leave the phone in the bag: no round is opened, and nothing is asked of the receiver.',
  card: 'Printed card',
  sheet: 'Blank shot sheet',
  after: 'Once the round is over, enter it from the sheet. Its shots count like any other.',
  enter: 'Enter the round that is over',
  entering: 'Opening it …',
} as const;
