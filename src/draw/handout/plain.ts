// What a student is told in the place of terms of mechanics and of the trade that only a coach need know; what is not here is plain already. Common practice, no source.
import type { Language } from '../../registry/language.ts';
import type { Terms } from './texts.ts';

type Plain = Pick<Terms, 'titles' | 'checkpoints'>;

const en: Plain = {
  titles: {
    'checkpoints.spine_tilt': 'Sideways lean of the upper body',
    'checkpoints.lead_arm': 'Steepness of the lead arm',
    'checkpoints.lead_wrist_hinge': 'Cocking of the lead wrist',
    'checkpoints.hand_depth': 'Hands, from the line of the toes',
    'checkpoints.pelvis_depth': 'Hips, from the line of the toes',
    'delivery.attack': 'Club up or down into the ball',
    'delivery.path': 'Way of the club through the ball',
    'delivery.face': 'Where the face points',
    'delivery.face_to_path': 'Face against the way of the club',
    'delivery.delivered_loft': 'Loft of the face as it meets the ball',
    'delivery.obliquity': 'How far the strike glances off the ball',
    'delivery.release_ratio': 'How fast the club swings past the arms',
    'delivery.arc.direction': 'Where the whole swing points',
    'delivery.arc.inclination': 'Steepness of the swing',
    'delivery.arc.radius': 'Width of the swing, from its middle',
    'delivery.low_point.ahead': 'Lowest point of the swing, from the ball',
    'delivery.low_point.depth': 'Depth of the lowest point of the swing',
    'flight.speed_ratio': 'Speed of the ball, for each 1 of the club',
    'flight.launch_angle': 'How steeply the ball starts',
    'flight.start': 'Where the ball starts',
    'flight.spin': 'How fast the ball spins',
    'flight.spin_tilt': 'To which side the spin of the ball leans',
    'flight.finish': 'Landing beside the target line',
    'flight.apex': 'Highest point of the flight',
    'flight.descent': 'How steeply the ball comes down',
  },
  checkpoints: {
    lead_arm_parallel_back: 'lead arm level going back',
    top: 'at the top',
    lead_arm_parallel_down: 'lead arm level coming down',
    shaft_parallel_down: 'shaft level coming down',
    impact: 'at the strike',
    shaft_parallel_through: 'shaft level after the strike',
    finish: 'at the end',
  },
};

const de: Plain = {
  titles: {
    'checkpoints.spine_tilt': 'Seitneigung des Oberkörpers',
    'checkpoints.lead_arm': 'Steilheit des vorderen Arms',
    'checkpoints.hand_depth': 'Hände, von der Linie der Zehen aus',
    'checkpoints.pelvis_depth': 'Hüfte, von der Linie der Zehen aus',
    'delivery.attack': 'Schläger auf- oder abwärts in den Ball',
    'delivery.path': 'Weg des Schlägers durch den Ball',
    'delivery.face': 'Wohin die Schlagfläche zeigt',
    'delivery.face_to_path': 'Schlagfläche gegen den Weg des Schlägers',
    'delivery.delivered_loft': 'Loft der Schlagfläche, wenn sie den Ball trifft',
    'delivery.obliquity': 'Wie sehr der Treffer den Ball streift',
    'delivery.release_ratio': 'Wie schnell der Schläger an den Armen vorbeischwingt',
    'delivery.arc.direction': 'Wohin der ganze Schwung zeigt',
    'delivery.arc.inclination': 'Steilheit des Schwungs',
    'delivery.arc.radius': 'Weite des Schwungs, von seiner Mitte aus',
    'delivery.low_point.ahead': 'Tiefster Punkt des Schwungs, vom Ball aus',
    'delivery.low_point.depth': 'Tiefe des tiefsten Punkts im Schwung',
    'flight.speed_ratio': 'Tempo des Balls, je 1 des Schlägers',
    'flight.launch_angle': 'Wie steil der Ball startet',
    'flight.start': 'Wohin der Ball startet',
    'flight.spin': 'Wie schnell sich der Ball dreht',
    'flight.spin_tilt': 'Nach welcher Seite sich die Drehung des Balls neigt',
    'flight.apex': 'Höchster Punkt des Flugs',
    'flight.descent': 'Wie steil der Ball herunterkommt',
  },
  checkpoints: {},
};

export const plain: Readonly<Record<Language, Plain>> = { en, de };
