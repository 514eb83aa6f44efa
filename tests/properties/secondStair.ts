/**
 * The same stair a second time, by another way: no formula of the core, only points. Floors,
 * treads and riser boards are put where they will be; the stringer is the polygon that is left
 * under them; every number is then measured on that polygon. Elevation: x from the finished face
 * of riser 1, z from the finished lower floor. Millimetres.
 */
import { NM, type RandomStair } from './randomStairs';

interface P {
  readonly x: number;
  readonly z: number;
}

const minus = (a: P, b: P): P => ({ x: a.x - b.x, z: a.z - b.z });
const dot = (a: P, b: P): number => a.x * b.x + a.z * b.z;
const length = (a: P): number => Math.sqrt(dot(a, a));

export interface SecondStair {
  readonly possible: boolean;
  /** The smallest of what must be more than nothing: near zero, two calculations may differ in their verdict. */
  readonly margin: number;
  readonly numbers: Readonly<Record<string, number | null | readonly number[]>>;
  readonly outline: readonly P[];
}

export function secondStair(stair: RandomStair, headroomWanted: number): SecondStair {
  const mm = Object.fromEntries(Object.entries(stair.nm).map(([key, nm]) => [key, nm / NM])) as Record<
    keyof RandomStair['nm'],
    number
  >;
  const n = stair.risers;
  const level = stair.top === 'level-with-floor';

  // Where the stringer ends, and what stands behind it: no height goes into either.
  const lastFace = (n - 1) * mm.run;
  const end = level
    ? lastFace + mm.riser + mm.topTread
    : stair.top === 'hanger-is-riser'
      ? lastFace
      : lastFace + mm.riser;
  const header = end + mm.hanger;

  // Floors. The lower one as a plane through its height where the flight lands, on the centre line.
  const on = stair.slope;
  const risesIn = on === undefined ? 0 : on.along / on.alongOver;
  const risesRight = on === undefined ? 0 : -on.across / on.acrossOver;
  const stood = on?.from == null ? header : on.from / NM;
  const lowerToday = -mm.lower;
  const upperToday = lowerToday + mm.foot + mm.rise + risesIn * (header - stood);
  const upperFinished = upperToday + mm.upper;
  const stand = stair.laidAfter ? lowerToday : 0;

  // Finished treads and riser boards: front faces, and what is behind and under them.
  const top = (i: number) => (upperFinished * i) / n;
  const face = (i: number) => (i - 1) * mm.run;
  const under = (i: number) => top(i) - mm.tread;
  const back = (i: number) => face(i) + mm.riser;
  const nose = (i: number): P => ({ x: face(i) - mm.nosing, z: top(i) });
  const carried = level ? n : n - 1;

  // The crown side: tips and inner corners. The lower edge runs beside the tips.
  const tips = Array.from({ length: carried }, (_, i): P => ({ x: back(i + 1), z: under(i + 1) }));
  const corners = tips.slice(0, -1).map((tip, i): P => ({ x: (tips[i + 1] as P).x, z: tip.z }));
  const first = tips[0] as P;
  const step: P = { x: mm.run, z: top(1) };
  const along: P = { x: step.x / length(step), z: step.z / length(step) };
  const into: P = { x: along.z, z: -along.x };
  const deep = mm.depth - mm.inset;
  const low: P = { x: first.x + into.x * deep, z: first.z + into.z * deep };
  // Where the lower edge and the floor beside the centre line meet.
  const onFloor = (x: number, y: number) => stand + risesIn * x + risesRight * y;
  const onLowAt = (y: number): P => {
    const climbs = along.z / along.x;
    const x = (onFloor(0, y) - low.z + climbs * low.x) / (climbs - risesIn);
    return { x, z: onFloor(x, y) };
  };
  // The outer stringers, and of these the one on the lower floor and the one on the higher.
  const outer = (mm.width - 2 * mm.spacer - mm.thickness) / 2;
  const aside = risesRight === 0 ? 0 : outer;
  const [deepAt, highAt] = risesRight > 0 ? [-aside, aside] : [aside, -aside];
  const onLowAtX = (x: number): P => ({ x, z: low.z + ((x - low.x) * along.z) / along.x });

  const toe: P = { x: back(1), z: onFloor(back(1), deepAt) };
  const heel = onLowAt(deepAt);
  const [highToe, highHeel] = [onFloor(back(1), highAt), onLowAt(highAt)];
  const endTop: P = { x: end, z: under(carried) };
  const endBottom = onLowAtX(end);
  const whole = [
    toe,
    ...tips.flatMap((tip, i) => (corners[i] ? [tip, corners[i] as P] : [tip])),
    endTop,
    endBottom,
    heel,
  ];
  const u = (p: P) => dot(minus(p, first), along);
  const v = (p: P) => dot(minus(p, first), into) + mm.inset;
  const us = whole.map(u);
  const shortest = Math.min(...us);
  // A full going behind the first tip: where an inner corner lies, or would lie on a longer stair.
  const corner: P = { x: first.x + mm.run, z: first.z };

  const cut = first.z - toe.z;
  const seat = Math.sign(heel.x - toe.x) * length(minus(heel, toe));
  const throat = mm.depth - v(corner);
  const plumb = endTop.z - endBottom.z;
  const shortCut = first.z - highToe;
  const kickerRoom = stair.kicker ? [shortCut - mm.kickerHeight, seat - mm.kickerWidth] : [];
  const skirts = (mm.width - 2 * mm.wallboard - 2 * mm.skirt) / 2;
  // The floor is less steep than the stair, and not square to it the other way; it stays under the first tread.
  const slopes =
    on === undefined ? [] : [along.z / along.x - risesIn, along.x / along.z + risesIn].map((each) => each * mm.run);
  if (risesRight !== 0) slopes.push(top(1) - Math.abs(risesRight) * skirts);
  const proportions = [mm.run / 2 - mm.nosing, mm.run / 4 - mm.riser];
  const heels = [end - highHeel.x, seat];
  const room = [...proportions, upperFinished, throat, shortCut, plumb, ...heels, ...kickerRoom, ...slopes];

  // Head and header.
  const headerTop = upperToday - mm.subfloor;
  const edge = header - mm.opening + mm.lining;
  const lineAt = (x: number) => nose(1).z + ((x - nose(1).x) * (nose(2).z - nose(1).z)) / (nose(2).x - nose(1).x);
  const ceiling = upperFinished - mm.floorDepth;
  const enough = ceiling - headroomWanted;
  const edgeWanted = nose(1).x + ((enough - nose(1).z) * mm.run) / top(1);

  // Boards.
  const open = mm.riser === 0;
  const onTread = stair.joint === 'riser-on-tread';
  const treadBack = (i: number) => face(i + 1) + (onTread ? mm.riser : 0);
  const lastBack = level || stair.top === 'hanger-is-riser' ? end : treadBack(carried);
  const reach = risesRight === 0 ? 0 : skirts;
  const lowest = Math.min(...[0, mm.riser].flatMap((x) => [onFloor(x, -reach), onFloor(x, reach)]));
  const boardFoot = (i: number) => (i === 1 ? lowest : onTread ? top(i - 1) : under(i - 1));
  const nosingUnder = upperFinished - mm.upperNosing;

  return {
    possible: room.every((each) => each > 0),
    margin: Math.min(...room.map(Math.abs)),
    outline: stair.kicker
      ? [
          { x: toe.x, z: toe.z + mm.kickerHeight },
          ...whole.slice(1),
          { x: toe.x + mm.kickerWidth, z: onFloor(toe.x + mm.kickerWidth, deepAt) },
          { x: toe.x + mm.kickerWidth, z: onFloor(toe.x + mm.kickerWidth, deepAt) + mm.kickerHeight },
        ]
      : whole,
    numbers: {
      totalRise: upperFinished,
      unitRise: top(1),
      run: mm.run,
      treads: carried,
      totalRun: level ? end : face(n),
      pitchDegrees: (Math.atan(step.z / step.x) * 180) / Math.PI,
      stepLength: length(step),
      twoRisePlusRun: top(2) + mm.run,
      notchDepth: v(corner) - mm.inset,
      gaugeLine: v(corner),
      throat,
      firstRiserCut: cut,
      drop: top(1) - cut,
      seat,
      plumbCut: plumb,
      lastLevelCut: end - (tips.at(-1) as P).x,
      topBelowFinish: upperFinished - endTop.z,
      topBelowSubfloor: upperToday - endTop.z,
      stringerEnd: end,
      headerFace: header,
      boardLength: Math.max(...us) - shortest,
      firstMark: mm.trim - shortest,
      diagonal: length(minus(endTop, toe)),
      marks: tips.map(u),
      cornerMarks: corners.map(u),
      finishedTops: Array.from({ length: n + 1 }, (_, i) => top(i)),
      treadDepth: treadBack(1) - nose(1).x,
      lastTreadDepth: lastBack - nose(carried).x,
      riserHeights: open ? [] : tips.map((tip, i) => tip.z - boardFoot(i + 1)),
      riserOpening: open ? under(2) - top(1) : null,
      topRiserBoard:
        open || level || stair.top === 'hanger-is-riser' ? null : nosingUnder - (onTread ? top(n - 1) : under(n - 1)),
      hangerHeight:
        stair.top === 'hanger-is-riser' || stair.top === 'hanger-behind-riser' ? nosingUnder - endBottom.z : null,
      headroom: ceiling - Math.max(0, lineAt(edge)),
      openingNeeded: enough < 0 ? null : header - edgeWanted + mm.lining,
      headerContact: Math.min(endTop.z, headerTop) - Math.max(endBottom.z, headerTop - mm.headerDepth),
      headerDepthNeeded: headerTop - endBottom.z,
      ...widthOf(mm, stair.units),
    },
  };
}

/** Across: walls, skirts, and the stringers set in from the framing on both sides. */
function widthOf(mm: Record<keyof RandomStair['nm'], number>, units: RandomStair['units']) {
  const leftWall = mm.wallboard;
  const rightWall = mm.width - mm.wallboard;
  const firstCentre = mm.spacer + mm.thickness / 2;
  const lastCentre = mm.width - mm.spacer - mm.thickness / 2;
  return {
    'width.finished': rightWall - leftWall,
    'width.betweenSkirts': rightWall - mm.skirt - (leftWall + mm.skirt),
    'width.treadLength': rightWall - leftWall - 2 * mm.skirt - (units === 'metric' ? 1.5 : 25.4 / 16),
    'width.between': lastCentre - firstCentre,
  };
}
