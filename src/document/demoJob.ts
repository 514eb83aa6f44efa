/**
 * What is open at the first start: an invented stair of an invented boathouse, so that every part
 * of the page has something to show. The name says that it is an example, on screen and on paper.
 */
import type { JobText } from '../core/job/jobText';

export const demoJob: JobText = {
  format: 'pitchboard.job',
  version: 1,
  name: 'Boathouse (example, invented figures)',
  units: 'imperial',
  markStep: '1/16 in',
  rules: { pack: 'irc-2021' },
  stairs: [
    {
      id: 'loft',
      name: 'Sail loft stair',
      survey: {
        rise: '105 7/16 in',
        lowerToAdd: { length: '5/8 in', known: 'specified' },
        lowerLaid: 'after-stairs',
        upperToAdd: { length: '3/4 in', known: 'specified' },
        upperSubfloor: '3/4 in',
        floorDepth: '13 1/4 in',
        headerDepth: '11 1/4 in',
        openingFraming: '127 in',
        headerLining: '1/2 in',
        widthFraming: '39 1/2 in',
      },
      steps: {
        risers: 14,
        run: '10 in',
        nosing: '1 1/8 in',
        treadThickness: { length: '1 1/16 in', known: 'measured' },
        riserThickness: '3/4 in',
        joint: 'tread-butts-riser',
        upperNosingThickness: '3/4 in',
      },
      stringer: {
        stockDepth: '11 1/4 in',
        stockThickness: '1 1/2 in',
        top: 'hanger-is-riser',
        hanger: '3/4 in',
        kicker: { width: '3 1/2 in', height: '1 1/2 in' },
      },
    },
  ],
};
