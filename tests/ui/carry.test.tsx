import { screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { atStep, demoWith, field, form, openPage, retype } from './bench';

async function atCarry(firstJob = demoJob) {
  const page = await openPage({ firstJob });
  await atStep(page.user, 'Check');
  const part = within(await screen.findByRole('region', { name: 'What the stringer can carry' }));
  await part.findByRole('heading', { name: 'Screening figures' });
  return { ...page, part };
}

const WOOD = { species: 'southern-pine', grade: 'no-2', service: 'dry' } as const;

describe('what the stringer can carry', () => {
  it('asks for the wood, and claims nothing before it is told', async () => {
    const { part } = await atCarry();
    expect(part.getByText(/^Say which species it is/)).toBeTruthy();
    expect(part.queryByText(/the data allows/)).toBeNull();
    // Seven screening figures, and none of the printed ones is missing.
    expect(part.getAllByText('Not in the data')).toHaveLength(7);
    expect(part.getByText(/^comes to 1570 psi; not claimed$/)).toBeTruthy();
  });

  it('answers when it knows the wood, and the job keeps what it was told', async () => {
    const { part, user, present, planner } = await atCarry();
    await user.selectOptions(form().getByLabelText('Species'), 'Southern Pine');
    await user.selectOptions(form().getByLabelText('Grade'), 'No. 2');
    await user.selectOptions(form().getByLabelText('In use'), 'Dry');
    expect(present().stairs[0]?.carry).toEqual(WOOD);
    expect(part.getByText('comes to 1570 psi; the data allows 863 psi (183 %)')).toBeTruthy();
    await user.tab();
    await user.selectOptions(form().getByLabelText('In use'), 'Wet');
    // Wet wood counts as incised until somebody says that it is not.
    expect(part.getByText('comes to 1570 psi; the data allows 690 psi (228 %)')).toBeTruthy();
    planner.actions.undo();
    expect(present().stairs[0]?.carry?.service).toBe('dry');
  });

  it('shows the working, each figure with where it comes from, and memory as memory', async () => {
    const { part } = await atCarry(demoWith({ carry: WOOD }));
    const steps = within(part.getByText('The working, step by step').closest('details') as HTMLElement);
    const bending = steps.getByRole('heading', { name: 'Bending that the data allows', hidden: true }).closest('li');
    expect(bending?.textContent).toContain('Fb × CD × CM × CF × Ci × Cr');
    expect(bending?.textContent).toContain('= 750 × 1 × 1 × 1 × 1 × 1.15 = 862.5 psi');
    expect(bending?.textContent).toContain('FROM MEMORY, look it up');
    expect(bending?.textContent).toContain('wet wood: does not apply');
  });

  it('leads from a number of the layout on to its own sum', async () => {
    const { part, user } = await atCarry(demoWith({ carry: WOOD }));
    await user.click(part.getByText('The working, step by step'));
    const [throat] = part.getAllByRole('button', { name: /^Throat, 5\s/ });
    await user.click(throat as HTMLElement);
    const panel = await screen.findByRole('dialog', { name: 'Throat' });
    expect(panel.textContent).toContain('11.25');
  });

  it('names whose each printed figure is', async () => {
    const { part } = await atCarry();
    expect(part.getAllByText(/American Wood Council, deck guide DCA6, 2009/).length).toBeGreaterThan(0);
    expect(part.getAllByText(/USDA, Agriculture Handbook 73 \(FROM MEMORY/).length).toBeGreaterThan(0);
    const span = part.getByRole('heading', { name: /^level span: 122\s7\/8\sin$/ });
    expect(span.nextElementSibling?.textContent).toMatch(/^Exceedsat most 72\sin/);
  });

  it('says where the throat lies between figures that disagree', async () => {
    const { part } = await atCarry(demoWith({ steps: { ...demoJob.stairs[0]?.steps, run: '12 in' } }));
    expect(part.getByText(/^The throat lies between 3 1\/2 in and 5 in/)).toBeTruthy();
  });

  it('takes a load with its unit, completes a bare one, and refuses what is none', async () => {
    const { part, user, present } = await atCarry(demoWith({ carry: WOOD }));
    const live = field('Live load, spread');
    await retype(user, live, '100');
    await user.tab();
    expect(present().stairs[0]?.carry?.live).toBe('100 psf');
    await retype(user, live, '40 lbf');
    expect(part.getByText(/"40 lbf" is no such load; write a number with psf or kPa/)).toBeTruthy();
    expect(present().stairs[0]?.carry?.live).toBe('100 psf');
    await retype(user, live, '999999999');
    expect(part.getByText(/is more than any stair is built for/)).toBeTruthy();
    expect(document.body.textContent).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('keeps a wood that a file names and the data lacks, and claims nothing for it', async () => {
    const { part, present } = await atCarry(demoWith({ carry: { ...WOOD, species: 'bog oak' } }));
    expect(form().getByLabelText<HTMLSelectElement>('Species').selectedOptions[0]?.textContent).toBe(
      'bog oak (not in the data)',
    );
    expect(part.getByText(/^The data has no values for this species/)).toBeTruthy();
    expect(present().stairs[0]?.carry?.species).toBe('bog oak');
  });

  it('is reached from the step where the board is cut, in the first field', async () => {
    const { user } = await openPage();
    await atStep(user, 'Cut');
    expect(screen.getByText(/^The notches leave a throat of 5 3\/16 \+ in/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'What it can carry' }));
    await waitFor(() => expect(document.activeElement).toBe(form().getByLabelText('Species')));
  });

  it('stands on the printed pages without fields', async () => {
    const { user } = await openPage({ firstJob: demoWith({ carry: WOOD }) });
    await atStep(user, 'Print');
    const part = within(await screen.findByRole('region', { name: 'What the stringer can carry' }));
    expect(await part.findByText('comes to 1570 psi; the data allows 863 psi (183 %)')).toBeTruthy();
    expect(part.queryByRole('combobox')).toBeNull();
    expect(part.getByText('Species').nextElementSibling?.textContent).toBe('Southern Pine');
    expect(part.getByText('Dead load').nextElementSibling?.textContent).toBe('10 psf: usual dead load (from a copy)');
  });

  it('says in UK words what the UK trade calls otherwise', async () => {
    const { planner } = await atCarry(demoWith({ carry: WOOD }));
    planner.actions.setTerms('uk');
    const part = await screen.findByRole('region', { name: 'What the string can carry' });
    // An address is what it is.
    expect(part.textContent.replaceAll('wooden-stair-stringers', '')).not.toMatch(/stringer|header/i);
  });
});
