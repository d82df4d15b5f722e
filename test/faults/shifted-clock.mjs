// A process whose whole clock, the libraries' too, is put forward or back by whoever started it.
const True = Date;
let ahead = 0;

globalThis.Date = class Date extends True {
  constructor(...given) {
    if (given.length) super(...given);
    else super(True.now() + ahead);
  }

  static now() {
    return True.now() + ahead;
  }
};

process.on('message', ({ aheadMinutes }) => {
  ahead = aheadMinutes * 60_000;
});
// To be spoken to must not keep a process alive.
process.channel?.unref();
