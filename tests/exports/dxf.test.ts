/** Drawing files, each read by two readers that know nothing of each other nor of the writer. */
import { Helper } from 'dxf';
import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { boardFrame, toBoard } from '../../src/core/stringer/board';
import { dxfFile, elevationDxfFile, templatesDxfFile } from '../../src/export/stairFiles';
import { LOFT, SLAB } from '../fixtures/stairs';
import { NAMES, named, sourceOf, textOf } from './asNamed';
import { MM_PER_INCH } from './readPdf';
import { choiceOf } from './sheets';

interface Corner {
  readonly x: number;
  readonly y: number;
}

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly corners: readonly Corner[];
  readonly closed: boolean;
  readonly text: string;
}

interface Read {
  readonly units: number | undefined;
  readonly measurement: number | undefined;
  readonly entities: readonly Entity[];
}

function readByOne(text: string): Read {
  const read = new DxfParser().parseSync(text);
  if (read === null) throw new Error('not read');
  const entities = read.entities as unknown as (Omit<Entity, 'corners' | 'closed' | 'text'> & {
    text?: string;
    vertices?: Corner[];
    shape?: boolean;
  })[];
  return {
    units: read.header['$INSUNITS'] as unknown as number,
    measurement: read.header['$MEASUREMENT'] as unknown as number,
    entities: entities.map(({ type, layer, vertices = [], shape = false, text: said = '' }) => ({
      type,
      layer,
      corners: vertices,
      closed: shape,
      text: said,
    })),
  };
}

interface OtherEntity {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: Corner[];
  readonly start?: Corner;
  readonly end?: Corner;
  readonly closed?: boolean;
  readonly string?: string;
}

function readByOther(text: string): Read {
  const { header, entities } = new Helper(text).parsed as unknown as {
    header: { insUnits: number; measurement: number };
    entities: OtherEntity[];
  };
  return {
    units: header.insUnits,
    measurement: header.measurement,
    entities: entities.map(({ type, layer, vertices, start, end, closed = false, string = '' }) => ({
      type,
      layer,
      corners: vertices ?? (start && end ? [start, end] : []),
      closed,
      text: string,
    })),
  };
}

const READERS = [
  ['dxf-parser', readByOne],
  ['dxf', readByOther],
] as const;

const JOBS = [
  ['imperial', LOFT, 1, 0, 4],
  ['metric', SLAB, 4, 1, 100],
] as const;

const FILES = [
  ['stringer', dxfFile],
  ['templates', templatesDxfFile],
  ['elevation', elevationDxfFile],
] as const;

const CASES = READERS.flatMap(([reader, read]) =>
  JOBS.map(([units, job, code, measurement, proof]) => ({ reader, read, units, job, code, measurement, proof })),
);

describe.each(CASES)('a drawing file, $units, read by $reader', ({ read, units, job, code, measurement, proof }) => {
  const scale = units === 'imperial' ? MM_PER_INCH : 1;

  it.each(FILES)('declares its unit, and proves it by a dimensioned length: %s', async (_name, file) => {
    const { units: said, measurement: system, entities } = read(await textOf(file(sourceOf(job), choiceOf())));
    expect([said, system]).toEqual([code, measurement]);
    const level = entities.filter(
      ({ layer, corners: [a, b] }) => layer === 'DIM' && a !== undefined && b !== undefined && a.y === b.y,
    );
    // The lowest of all dimension lines: everything else is drawn above it.
    const [ruler] = [...level].sort((one, other) => (one.corners[0]?.y ?? 0) - (other.corners[0]?.y ?? 0));
    const [a, b] = (ruler as Entity).corners as [Corner, Corner];
    expect(Math.abs(b.x - a.x)).toBeCloseTo(proof, 9);
    const words = entities.filter(({ type }) => type === 'TEXT').map(({ text }) => text);
    expect(words).toContain(units === 'imperial' ? '4 in' : '100 mm');
  });

  it('has the outline of the layout, closed, where the layout has it', async () => {
    const source = sourceOf(job);
    const { entities } = read(await textOf(dxfFile(source, choiceOf())));
    const { layout } = source.plan;
    const frame = boardFrame(layout.flight, layout.stringer.tipInset);
    const [outline, ...others] = entities.filter(({ type }) => type === 'LWPOLYLINE');
    expect(others).toEqual([]);
    expect(outline).toMatchObject({ layer: 'CUT', closed: true });
    expect(outline?.corners).toHaveLength(layout.stringer.outline.length);
    outline?.corners.forEach(({ x, y }, i) => {
      const { x: u, y: v } = toBoard(frame, layout.stringer.outline[i] as Corner);
      expect(x * scale).toBeCloseTo(u, 6);
      expect(y * scale).toBeCloseTo(-v, 6);
    });
  });

  it('has templates at full size: the triangle’s two cuts are the run and the unit rise', async () => {
    const source = sourceOf(job);
    const { entities } = read(await textOf(templatesDxfFile(source, choiceOf())));
    const lengths = entities
      .filter(({ layer }) => layer === 'CUT')
      .map(({ corners: [a, b] }) => Math.hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0)) * scale);
    const { run, unitRise } = source.plan.layout.flight;
    expect(lengths.slice(0, 2)).toEqual([expect.closeTo(run, 6), expect.closeTo(unitRise, 6)]);
    expect(entities.some(({ layer }) => layer === 'WASTE')).toBe(true);
  });

  it('has the elevation in parts by what they are: every tread and the stringer in wood', async () => {
    const source = sourceOf(job);
    const { entities } = read(await textOf(elevationDxfFile(source, choiceOf())));
    const { flight, stringer } = source.plan.layout;
    const wood = entities.filter(({ layer }) => layer === 'WOOD');
    const treads = wood.filter(({ corners }) => {
      const ys = corners.map(({ y }) => y * scale);
      return corners.length === 4 && Math.abs(Math.max(...ys) - Math.min(...ys) - flight.treadThickness) < 0.001;
    });
    expect(treads.length).toBeGreaterThanOrEqual(flight.treads);
    expect(wood.some(({ corners }) => corners.length === stringer.outline.length)).toBe(true);
    for (const layer of ['HOUSE', 'REFERENCE', 'DIM', 'TEXT']) {
      expect(
        entities.some((entity) => entity.layer === layer),
        layer,
      ).toBe(true);
    }
  });

  it.each(FILES)('holds the same things whatever the stair is called: %s', async (_name, file) => {
    const kinds = ({ entities }: Read) => entities.map(({ type, layer }) => `${type} ${layer}`);
    const plain = kinds(read(await textOf(file(sourceOf(job), choiceOf()))));
    for (const name of NAMES) {
      const named_ = read(await textOf(file(sourceOf(named(job, name)), choiceOf())));
      expect(kinds(named_), name).toEqual(plain);
      for (const { text } of named_.entities) expect(text).not.toMatch(/%%|\\|[\p{Cc}\p{Cf}]/u);
    }
  });
});
