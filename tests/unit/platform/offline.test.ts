import { describe, expect, it, vi } from 'vitest';
import { createOfflineKeeper, type KeepingWorker, type Offline, type WorkerRoom } from '../../../src/platform/offline';

vi.stubGlobal('document', { baseURI: 'https://stairs.invalid/under/a/path/index.html?job=1' });
vi.stubGlobal('window', {});

class FakeWorker extends EventTarget implements KeepingWorker {
  readonly heard: string[] = [];
  postMessage(message: string): void {
    this.heard.push(message);
  }
}

class FakeRoom extends EventTarget implements WorkerRoom {
  installing: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  active: FakeWorker | null = null;
}

class FakeHouse extends EventTarget {
  controller: object | null = null;
  readonly asked: string[] = [];
  constructor(readonly room: FakeRoom | null) {
    super();
  }
  register(address: string): Promise<WorkerRoom> {
    this.asked.push(address);
    return this.room === null ? Promise.reject(new Error('refused')) : Promise.resolve(this.room);
  }
}

async function started(house: FakeHouse) {
  const reload = vi.fn();
  const keeper = createOfflineKeeper(house, reload);
  const heard: Offline[] = [];
  keeper.subscribe(() => heard.push(keeper.now()));
  keeper.start();
  await vi.waitFor(() => expect(house.asked).toHaveLength(1));
  await Promise.resolve();
  return { keeper, heard, reload };
}

describe('keeping the program on the device', () => {
  it('says so where the browser cannot', () => {
    const keeper = createOfflineKeeper(undefined);
    keeper.start();
    keeper.begin();
    expect(keeper.now()).toBe('cannot');
  });

  it('asks once, by the address beside the page, and follows the first version until it is kept', async () => {
    const room = new FakeRoom();
    const worker = new FakeWorker();
    room.installing = worker;
    const house = new FakeHouse(room);
    const { keeper, heard } = await started(house);
    keeper.start();
    expect(house.asked).toEqual(['https://stairs.invalid/under/a/path/offline.js']);
    expect(keeper.now()).toBe('fetching');
    Object.assign(room, { installing: null, active: worker });
    worker.dispatchEvent(new Event('statechange'));
    expect(heard).toEqual(['kept']);
  });

  it('says that it failed where the browser refuses, or a file did not come', async () => {
    const refused = await started(new FakeHouse(null));
    await vi.waitFor(() => expect(refused.keeper.now()).toBe('failed'));
    const room = new FakeRoom();
    const worker = new FakeWorker();
    room.installing = worker;
    const torn = await started(new FakeHouse(room));
    room.installing = null;
    worker.dispatchEvent(new Event('statechange'));
    expect(torn.keeper.now()).toBe('failed');
  });

  it('has a newer version wait until it is told to begin, and only then loads the page again', async () => {
    const room = new FakeRoom();
    room.active = new FakeWorker();
    const house = new FakeHouse(room);
    house.controller = room.active;
    const { keeper, heard, reload } = await started(house);
    expect(keeper.now()).toBe('kept');
    const newer = new FakeWorker();
    room.installing = newer;
    room.dispatchEvent(new Event('updatefound'));
    Object.assign(room, { installing: null, waiting: newer });
    newer.dispatchEvent(new Event('statechange'));
    expect(heard).toEqual(['kept', 'newer']);
    house.dispatchEvent(new Event('controllerchange'));
    expect(newer.heard).toEqual([]);
    expect(reload).not.toHaveBeenCalled();
    keeper.begin();
    expect(newer.heard).toEqual(['begin']);
    house.dispatchEvent(new Event('controllerchange'));
    expect(reload).toHaveBeenCalledOnce();
  });

  it('stays with the version that is open where a newer one did not come whole', async () => {
    const room = new FakeRoom();
    room.active = new FakeWorker();
    const house = new FakeHouse(room);
    house.controller = room.active;
    const { keeper, heard } = await started(house);
    const newer = new FakeWorker();
    room.installing = newer;
    room.dispatchEvent(new Event('updatefound'));
    room.installing = null;
    newer.dispatchEvent(new Event('statechange'));
    expect(keeper.now()).toBe('kept');
    expect(heard).toEqual(['kept']);
  });
});
