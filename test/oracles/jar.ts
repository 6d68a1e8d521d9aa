/** Jars settled at high precision by a reference library, to be compared and never used. */
export const jarOracle = {
  library: 'scipy 1.10.1',
  call: 'settleable * scipy.integrate.quad of min(1, v t / 0.3 m) over the normal density of ln v',
  jars: [
    {
      median: 0.01,
      spread: 2,
      settleable: 0.8,
      readings: [
        [15, 0.4425310602817207],
        [30, 0.6483145145789995],
        [60, 0.7650612907077274],
        [120, 0.7962000047318168],
        [240, 0.79982132976473],
        [480, 0.7999965565393614],
        [960, 0.7999999736669902],
        [1920, 0.7999999999217207],
      ],
    },
    {
      median: 0.002,
      spread: 3,
      settleable: 1,
      readings: [
        [15, 0.1717619504112161],
        [30, 0.3065866508202378],
        [60, 0.49151566767434424],
        [120, 0.6905160428264477],
        [240, 0.8512375244819811],
        [480, 0.9457688478206389],
        [960, 0.9854583242237241],
        [1920, 0.9971950452323223],
      ],
    },
    {
      median: 0.003,
      spread: 1.5,
      settleable: 0.35,
      readings: [
        [15, 0.05699784029683445],
        [30, 0.1139280486429074],
        [60, 0.21955514677564014],
        [120, 0.3252153162833578],
        [240, 0.34931312035441137],
        [480, 0.34999834850693295],
        [960, 0.3499999997264508],
        [1920, 0.3499999999999972],
      ],
    },
    {
      median: 0.0005,
      spread: 8,
      settleable: 0.9,
      readings: [
        [15, 0.10852085556047082],
        [30, 0.1695953457091422],
        [60, 0.25008630176536617],
        [120, 0.3474605469741465],
        [240, 0.4551242987203459],
        [480, 0.5635472681022745],
        [960, 0.6627219585431104],
        [1920, 0.744936526300258],
      ],
    },
  ],
} as {
  readonly library: string;
  readonly call: string;
  readonly jars: readonly {
    readonly median: number;
    readonly spread: number;
    readonly settleable: number;
    readonly readings: readonly (readonly [number, number])[];
  }[];
};
