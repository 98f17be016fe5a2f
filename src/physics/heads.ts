// Representative heads by kind of club, as rigid bodies; knows nothing of any maker's product.

export type HeadKind = 'driver' | 'fairway' | 'hybrid' | 'iron' | 'wedge';

export interface Head {
  /** kg; Infinity for a wall. */
  readonly mass: number;
  /** Moments of inertia about axes through the centre of mass, kg m²; Infinity for a head that cannot turn. */
  readonly inertia: {
    /** About the vertical: resists twisting open and shut. */
    readonly vertical: number;
    /** About the line from heel to toe: resists tipping back. */
    readonly heelToe: number;
    /** About the line from front to back. */
    readonly frontBack: number;
  };
  /** How far the centre of mass lies behind the centre of the face, along its normal, m. */
  readonly depth: number;
  /** Where the normal through the centre of mass meets the face, from the face's centre, m; the centre if left out. */
  readonly foot?: { /** Toward the toe positive. */ readonly across: number; readonly height: number };
  /** Radius of the face in the horizontal section, m; Infinity where flat. */
  readonly bulge: number;
  /** Radius of the face in the vertical section, m; Infinity where flat. */
  readonly roll: number;
  /** Normal restitution of this head where it differs from the general rule: `atRest` − `perSpeed` · normal speed. */
  readonly restitution?: { readonly atRest: number; /** s/m */ readonly perSpeed: number };
}

export interface RepresentativeHead {
  readonly head: Head;
  /** Standard uncertainty of the mass over clubs of the kind, kg. */
  readonly massUncertainty: number;
  /** Standard uncertainty of the normal restitution over clubs of the kind. */
  readonly restitutionUncertainty: number;
  readonly source: string;
}

const gramSquareCentimetre = 1e-7;
const judgement = 'judgement: common sizes of such heads, no measured head behind it';

/** Penner's slope (Am. J. Phys. 69:563), lifted so that a thin face has the rules' limit of 0.822 at its test speed. */
const thinFace = { atRest: 0.822 + 0.0029 * 48.77, perSpeed: 0.0029 };

export const representativeHeads: Readonly<Record<HeadKind, RepresentativeHead>> = {
  driver: {
    head: {
      mass: 0.204,
      inertia: inertia(5679, 4085, 2843),
      depth: 0.0423,
      foot: { across: 0, height: 0.0029 },
      bulge: 0.305,
      roll: 0.305,
      restitution: thinFace,
    },
    massUncertainty: 0.004,
    restitutionUncertainty: 0.015,
    source:
      'a measured driver head (Proceedings 2020, 49(1):47, table 1): mass, centre of mass, diagonal of the inertia, ' +
      'bulge; its products of inertia (733 and 530 g cm²) and the 1 mm of its centre of mass to the side are left out, as ' +
      'belonging to that one head; roll taken equal to the bulge; restitution at ' +
      'the rules’ limit of 0.822 at 48.77 m/s (R&A / USGA Equipment Rules, part 2) by judgement, which gives the 0.83 ' +
      'of that head at 46 m/s',
  },
  fairway: {
    head: {
      mass: 0.212,
      inertia: inertia(2700, 1600, 1700),
      depth: 0.03,
      bulge: 0.28,
      roll: 0.3,
      restitution: { atRest: thinFace.atRest - 0.02, perSpeed: thinFace.perSpeed },
    },
    massUncertainty: 0.006,
    restitutionUncertainty: 0.025,
    source: judgement,
  },
  hybrid: {
    head: { mass: 0.235, inertia: inertia(2500, 1200, 1700), depth: 0.02, bulge: 0.4, roll: 0.5 },
    massUncertainty: 0.01,
    restitutionUncertainty: 0.03,
    source: judgement,
  },
  iron: {
    head: { mass: 0.26, inertia: inertia(2500, 600, 2200), depth: 0.008, bulge: Infinity, roll: Infinity },
    massUncertainty: 0.015,
    restitutionUncertainty: 0.025,
    source: judgement,
  },
  wedge: {
    head: { mass: 0.3, inertia: inertia(2700, 900, 2500), depth: 0.008, bulge: Infinity, roll: Infinity },
    massUncertainty: 0.01,
    restitutionUncertainty: 0.025,
    source: judgement,
  },
};

/** A flat head of that mass that cannot turn: the plane model of the textbooks, without gear effect. */
export function pointHead(mass: number): Head {
  return {
    mass,
    inertia: { vertical: Infinity, heelToe: Infinity, frontBack: Infinity },
    depth: 0,
    bulge: Infinity,
    roll: Infinity,
  };
}

function inertia(vertical: number, heelToe: number, frontBack: number): Head['inertia'] {
  return {
    vertical: vertical * gramSquareCentimetre,
    heelToe: heelToe * gramSquareCentimetre,
    frontBack: frontBack * gramSquareCentimetre,
  };
}
