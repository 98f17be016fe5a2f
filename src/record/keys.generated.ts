// Generated from the schemas by `npx tsx build/generate.ts`: the keys known at each place; do not edit.

/** Keys to what may stand below them; `*` stands for any key, `[]` for the items of a list. */
export interface KeyTree {
  readonly [key: string]: KeyTree;
}

const k0: KeyTree = {};
const k1: KeyTree = {"value":k0,"give_or_take":k0,"by":k0,"note":k0,"doubtful":k0,"seen":k0};
const k2: KeyTree = {"value":k0,"give_or_take":k0,"by":k0,"note":k0,"doubtful":k0,"seen":k0,"[]":k1};
const k3: KeyTree = {"temperature":k2,"altitude":k2,"pressure":k2,"humidity":k2,"wind":k2};
const k4: KeyTree = {"head":k2,"sternum":k2,"pelvis":k2,"lead_shoulder":k2,"hands":k2,"lead_knee":k2,"lead_pressure":k2,"shoulder_turn":k2,"pelvis_turn":k2,"shoulder_tilt":k2,"spine_tilt":k2,"forward_bend":k2,"lead_arm":k2,"lead_elbow_bend":k2,"trail_elbow_bend":k2,"lead_wrist_hinge":k2,"lead_wrist_bow":k2,"shaft_lean":k2,"shaft_inclination":k2,"hand_depth":k2,"pelvis_depth":k2,"head_height":k2,"time":k2,"stance_width":k2,"lead_foot_flare":k2,"trail_foot_flare":k2,"ball_position":k2,"stance_direction":k2,"shoulder_direction":k2};
const k5: KeyTree = {"head":k2,"sternum":k2,"pelvis":k2,"lead_shoulder":k2,"hands":k2,"lead_knee":k2,"lead_pressure":k2,"shoulder_turn":k2,"pelvis_turn":k2,"shoulder_tilt":k2,"spine_tilt":k2,"forward_bend":k2,"lead_arm":k2,"lead_elbow_bend":k2,"trail_elbow_bend":k2,"lead_wrist_hinge":k2,"lead_wrist_bow":k2,"shaft_lean":k2,"shaft_inclination":k2,"hand_depth":k2,"pelvis_depth":k2,"head_height":k2,"time":k2};
const k6: KeyTree = {"address":k4,"takeaway":k5,"lead_arm_parallel_back":k5,"top":k5,"lead_arm_parallel_down":k5,"shaft_parallel_down":k5,"impact":k5,"shaft_parallel_through":k5,"finish":k5};
const k7: KeyTree = {"direction":k2,"inclination":k2,"radius":k2};
const k8: KeyTree = {"ahead":k2,"depth":k2};
const k9: KeyTree = {"club_speed":k2,"attack":k2,"path":k2,"face":k2,"face_to_path":k2,"delivered_loft":k2,"obliquity":k2,"release_ratio":k2,"arc":k7,"low_point":k8};
const k10: KeyTree = {"starts":k2,"length":k2,"depth":k2,"direction":k2};
const k11: KeyTree = {"divot":k10};
const k12: KeyTree = {"across":k2,"height":k2};
const k13: KeyTree = {"ball_speed":k2,"speed_ratio":k2,"launch_angle":k2,"start":k2,"spin":k2,"spin_tilt":k2,"carry":k2,"total":k2,"curve":k2,"finish":k2,"apex":k2,"descent":k2,"time":k2,"shape":k0};
const k14: KeyTree = {"ball_speed":k2,"speed_ratio":k2,"launch_angle":k2,"start":k2,"spin":k2,"spin_tilt":k2,"carry":k2,"total":k2,"curve":k2,"finish":k2,"apex":k2,"descent":k2,"time":k2,"club_speed":k2,"attack":k2,"path":k2,"face":k2,"face_to_path":k2,"delivered_loft":k2,"obliquity":k2,"release_ratio":k2,"arc.direction":k2,"arc.inclination":k2,"arc.radius":k2,"low_point.ahead":k2,"low_point.depth":k2,"across":k2,"height":k2,"flight.ball_speed":k2,"flight.speed_ratio":k2,"flight.launch_angle":k2,"flight.start":k2,"flight.spin":k2,"flight.spin_tilt":k2,"flight.carry":k2,"flight.total":k2,"flight.curve":k2,"flight.finish":k2,"flight.apex":k2,"flight.descent":k2,"flight.time":k2,"delivery.club_speed":k2,"delivery.attack":k2,"delivery.path":k2,"delivery.face":k2,"delivery.face_to_path":k2,"delivery.delivered_loft":k2,"delivery.obliquity":k2,"delivery.release_ratio":k2,"delivery.arc.direction":k2,"delivery.arc.inclination":k2,"delivery.arc.radius":k2,"delivery.low_point.ahead":k2,"delivery.low_point.depth":k2,"strike.across":k2,"strike.height":k2,"shape":k0,"note":k0};
const k15: KeyTree = {"[]":k14};
const k16: KeyTree = {"fault":k0,"at":k0,"note":k0};
const k17: KeyTree = {"[]":k16};
const k18: KeyTree = {"value":k0,"note":k0};
const k19: KeyTree = {"shape":k0,"ball_speed":k18,"speed_ratio":k18,"launch_angle":k18,"start":k18,"spin":k18,"spin_tilt":k18,"carry":k18,"total":k18,"curve":k18,"finish":k18,"apex":k18,"descent":k18,"time":k18,"contact":k0,"club":k0,"note":k0};
const k20: KeyTree = {"[]":k19};
const k21: KeyTree = {"[]":k0};
const k22: KeyTree = {"change":k0,"to":k18,"because":k21,"proof":k0,"note":k0};
const k23: KeyTree = {"[]":k22};
const k24: KeyTree = {"swing":k0,"student":k0,"date":k0,"club":k0,"template":k0,"faults_from":k0,"conditions":k3,"checkpoints":k6,"delivery":k9,"ground":k11,"strike":k12,"flight":k13,"shots":k15,"faults":k17,"goals":k20,"plan":k23,"notes":k0};
const k25: KeyTree = {"kind":k0,"loft":k2,"lie":k2,"length":k2,"head_mass":k2,"note":k0};
const k26: KeyTree = {"*":k25};
const k27: KeyTree = {"part":k0,"side":k0,"since":k0,"note":k0};
const k28: KeyTree = {"[]":k27};
const k29: KeyTree = {"student":k0,"name":k0,"born":k0,"hand":k0,"stature":k2,"mass":k2,"body_table":k0,"bag":k26,"goals":k20,"injuries":k28,"notes":k0};
const k30: KeyTree = {"window":k0,"strict":k0,"source":k0,"note":k0};
const k31: KeyTree = {"head":k30,"sternum":k30,"pelvis":k30,"lead_shoulder":k30,"hands":k30,"lead_knee":k30,"lead_pressure":k30,"shoulder_turn":k30,"pelvis_turn":k30,"shoulder_tilt":k30,"spine_tilt":k30,"forward_bend":k30,"lead_arm":k30,"lead_elbow_bend":k30,"trail_elbow_bend":k30,"lead_wrist_hinge":k30,"lead_wrist_bow":k30,"shaft_lean":k30,"shaft_inclination":k30,"hand_depth":k30,"pelvis_depth":k30,"head_height":k30,"time":k30,"stance_width":k30,"lead_foot_flare":k30,"trail_foot_flare":k30,"ball_position":k30,"stance_direction":k30,"shoulder_direction":k30};
const k32: KeyTree = {"head":k30,"sternum":k30,"pelvis":k30,"lead_shoulder":k30,"hands":k30,"lead_knee":k30,"lead_pressure":k30,"shoulder_turn":k30,"pelvis_turn":k30,"shoulder_tilt":k30,"spine_tilt":k30,"forward_bend":k30,"lead_arm":k30,"lead_elbow_bend":k30,"trail_elbow_bend":k30,"lead_wrist_hinge":k30,"lead_wrist_bow":k30,"shaft_lean":k30,"shaft_inclination":k30,"hand_depth":k30,"pelvis_depth":k30,"head_height":k30,"time":k30};
const k33: KeyTree = {"address":k31,"takeaway":k32,"lead_arm_parallel_back":k32,"top":k32,"lead_arm_parallel_down":k32,"shaft_parallel_down":k32,"impact":k32,"shaft_parallel_through":k32,"finish":k32};
const k34: KeyTree = {"direction":k30,"inclination":k30,"radius":k30};
const k35: KeyTree = {"ahead":k30,"depth":k30};
const k36: KeyTree = {"club_speed":k30,"attack":k30,"path":k30,"face":k30,"face_to_path":k30,"delivered_loft":k30,"obliquity":k30,"release_ratio":k30,"arc":k34,"low_point":k35};
const k37: KeyTree = {"starts":k30,"length":k30,"depth":k30,"direction":k30};
const k38: KeyTree = {"divot":k37};
const k39: KeyTree = {"across":k30,"height":k30};
const k40: KeyTree = {"ball_speed":k30,"speed_ratio":k30,"launch_angle":k30,"start":k30,"spin":k30,"spin_tilt":k30,"carry":k30,"total":k30,"curve":k30,"finish":k30,"apex":k30,"descent":k30,"time":k30};
const k41: KeyTree = {"template":k0,"title":k0,"clubs":k21,"checkpoints":k33,"delivery":k36,"ground":k38,"strike":k39,"flight":k40,"notes":k0};
const k42: KeyTree = {"expression":k0,"weight":k0};
const k43: KeyTree = {"[]":k42};
const k44: KeyTree = {"effect":k0,"direction":k0,"size":k0};
const k45: KeyTree = {"[]":k44};
const k46: KeyTree = {"change":k0,"to":k0,"by":k0,"when":k0};
const k47: KeyTree = {"[]":k46};
const k48: KeyTree = {"title":k0,"explanation":k0,"at":k21,"evidence":k43,"tends_to":k45,"changes":k47,"cautions":k21,"drills":k21};
const k49: KeyTree = {"*":k48};
const k50: KeyTree = {"faults":k0,"title":k0,"extends":k0,"book":k49,"notes":k0};
const k51: KeyTree = {"author":k0,"time":k0,"text":k0};
const k52: KeyTree = {"[]":k51};
const k53: KeyTree = {"id":k0,"about":k0,"value":k0,"author":k0,"time":k0,"state":k0,"text":k0,"replies":k52};
const k54: KeyTree = {"[]":k53};
const k55: KeyTree = {"review":k0,"of":k0,"threads":k54,"notes":k0};
const k56: KeyTree = {"*":k0};
const k57: KeyTree = {"length":k0,"angle":k0,"speed":k0,"rotation":k0,"time":k0,"mass":k0,"inertia":k0,"temperature":k0,"pressure":k0,"fraction":k0,"ratio":k0};
const k58: KeyTree = {"meaning":k0,"uncertainty":k57};
const k59: KeyTree = {"eye":k58,"video":k58,"tape":k58,"ruler":k58,"alignment stick":k58,"goniometer":k58,"inclinometer":k58,"radar":k58,"camera":k58,"motion capture":k58,"pressure mat":k58,"force plate":k58,"ball mark":k58,"scale":k58,"loft and lie gauge":k58,"specification":k58,"rangefinder":k58,"pacing":k58,"map":k58,"stopwatch":k58,"weather report":k58,"anemometer":k58,"thermometer":k58,"barometer":k58,"hygrometer":k58,"*":k58};
const k60: KeyTree = {"quantity":k0,"unit":k0,"by":k0};
const k61: KeyTree = {"*":k60};
const k62: KeyTree = {"by":k0,"columns":k61};
const k63: KeyTree = {"drag":k0,"lift":k0,"correlation":k0,"shots":k0,"ball_speed":k0};
const k64: KeyTree = {"swingwright":k0,"coverage":k0,"severities":k56,"methods":k59,"shots":k62,"calibration":k63,"notes":k0};

/** By kind of file, from its top-level keys on. */
export const knownKeys = {
  swing: k24,
  student: k29,
  template: k41,
  faults: k50,
  review: k55,
  workspace: k64,
} as const;
