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
const k18: KeyTree = {"miss":k0,"note":k0};
const k19: KeyTree = {"[]":k18};
const k20: KeyTree = {"value":k0,"note":k0};
const k21: KeyTree = {"shape":k0,"ball_speed":k20,"speed_ratio":k20,"launch_angle":k20,"start":k20,"spin":k20,"spin_tilt":k20,"carry":k20,"total":k20,"curve":k20,"finish":k20,"apex":k20,"descent":k20,"time":k20,"contact":k0,"club":k0,"note":k0};
const k22: KeyTree = {"[]":k21};
const k23: KeyTree = {"[]":k0};
const k24: KeyTree = {"change":k0,"to":k20,"because":k23,"proof":k0,"feel":k0,"note":k0};
const k25: KeyTree = {"[]":k24};
const k26: KeyTree = {"*":k2};
const k27: KeyTree = {"swing":k0,"student":k0,"date":k0,"club":k0,"language":k0,"template":k0,"faults_from":k0,"conditions":k3,"checkpoints":k6,"delivery":k9,"ground":k11,"strike":k12,"flight":k13,"shots":k15,"faults":k17,"misses":k19,"goals":k22,"plan":k25,"predicted":k26,"notes":k0};
const k28: KeyTree = {"kind":k0,"loft":k2,"lie":k2,"length":k2,"head_mass":k2,"note":k0};
const k29: KeyTree = {"*":k28};
const k30: KeyTree = {"part":k0,"side":k0,"since":k0,"note":k0};
const k31: KeyTree = {"[]":k30};
const k32: KeyTree = {"student":k0,"name":k0,"born":k0,"language":k0,"hand":k0,"stature":k2,"mass":k2,"body_table":k0,"bag":k29,"goals":k22,"injuries":k31,"notes":k0};
const k33: KeyTree = {"window":k0,"strict":k0,"source":k0,"note":k0};
const k34: KeyTree = {"head":k33,"sternum":k33,"pelvis":k33,"lead_shoulder":k33,"hands":k33,"lead_knee":k33,"lead_pressure":k33,"shoulder_turn":k33,"pelvis_turn":k33,"shoulder_tilt":k33,"spine_tilt":k33,"forward_bend":k33,"lead_arm":k33,"lead_elbow_bend":k33,"trail_elbow_bend":k33,"lead_wrist_hinge":k33,"lead_wrist_bow":k33,"shaft_lean":k33,"shaft_inclination":k33,"hand_depth":k33,"pelvis_depth":k33,"head_height":k33,"time":k33,"stance_width":k33,"lead_foot_flare":k33,"trail_foot_flare":k33,"ball_position":k33,"stance_direction":k33,"shoulder_direction":k33};
const k35: KeyTree = {"head":k33,"sternum":k33,"pelvis":k33,"lead_shoulder":k33,"hands":k33,"lead_knee":k33,"lead_pressure":k33,"shoulder_turn":k33,"pelvis_turn":k33,"shoulder_tilt":k33,"spine_tilt":k33,"forward_bend":k33,"lead_arm":k33,"lead_elbow_bend":k33,"trail_elbow_bend":k33,"lead_wrist_hinge":k33,"lead_wrist_bow":k33,"shaft_lean":k33,"shaft_inclination":k33,"hand_depth":k33,"pelvis_depth":k33,"head_height":k33,"time":k33};
const k36: KeyTree = {"address":k34,"takeaway":k35,"lead_arm_parallel_back":k35,"top":k35,"lead_arm_parallel_down":k35,"shaft_parallel_down":k35,"impact":k35,"shaft_parallel_through":k35,"finish":k35};
const k37: KeyTree = {"direction":k33,"inclination":k33,"radius":k33};
const k38: KeyTree = {"ahead":k33,"depth":k33};
const k39: KeyTree = {"club_speed":k33,"attack":k33,"path":k33,"face":k33,"face_to_path":k33,"delivered_loft":k33,"obliquity":k33,"release_ratio":k33,"arc":k37,"low_point":k38};
const k40: KeyTree = {"starts":k33,"length":k33,"depth":k33,"direction":k33};
const k41: KeyTree = {"divot":k40};
const k42: KeyTree = {"across":k33,"height":k33};
const k43: KeyTree = {"ball_speed":k33,"speed_ratio":k33,"launch_angle":k33,"start":k33,"spin":k33,"spin_tilt":k33,"carry":k33,"total":k33,"curve":k33,"finish":k33,"apex":k33,"descent":k33,"time":k33};
const k44: KeyTree = {"template":k0,"title":k0,"clubs":k23,"checkpoints":k36,"delivery":k39,"ground":k41,"strike":k42,"flight":k43,"notes":k0};
const k45: KeyTree = {"expression":k0,"weight":k0};
const k46: KeyTree = {"[]":k45};
const k47: KeyTree = {"effect":k0,"direction":k0,"size":k0,"of":k0};
const k48: KeyTree = {"[]":k47};
const k49: KeyTree = {"change":k0,"to":k0,"by":k0,"feel":k0,"when":k0};
const k50: KeyTree = {"[]":k49};
const k51: KeyTree = {"title":k0,"explanation":k0,"at":k23,"evidence":k46,"tends_to":k48,"changes":k50,"cautions":k23,"drills":k23};
const k52: KeyTree = {"*":k51};
const k53: KeyTree = {"faults":k0,"title":k0,"extends":k0,"book":k52,"notes":k0};
const k54: KeyTree = {"author":k0,"time":k0,"state":k0,"text":k0,"suggests":k0};
const k55: KeyTree = {"[]":k54};
const k56: KeyTree = {"id":k0,"about":k0,"value":k0,"author":k0,"time":k0,"state":k0,"text":k0,"suggests":k0,"replies":k55};
const k57: KeyTree = {"[]":k56};
const k58: KeyTree = {"by":k0,"time":k0,"hash":k0};
const k59: KeyTree = {"[]":k58};
const k60: KeyTree = {"review":k0,"of":k0,"threads":k57,"signed_off":k59,"notes":k0};
const k61: KeyTree = {"*":k0};
const k62: KeyTree = {"length":k0,"angle":k0,"speed":k0,"rotation":k0,"time":k0,"mass":k0,"inertia":k0,"temperature":k0,"pressure":k0,"fraction":k0,"ratio":k0,"*":k0};
const k63: KeyTree = {"meaning":k0,"uncertainty":k62};
const k64: KeyTree = {"eye":k63,"video":k63,"tape":k63,"ruler":k63,"alignment stick":k63,"goniometer":k63,"inclinometer":k63,"radar":k63,"camera":k63,"motion capture":k63,"pressure mat":k63,"force plate":k63,"ball mark":k63,"scale":k63,"loft and lie gauge":k63,"specification":k63,"rangefinder":k63,"pacing":k63,"map":k63,"stopwatch":k63,"weather report":k63,"anemometer":k63,"thermometer":k63,"barometer":k63,"hygrometer":k63,"*":k63};
const k65: KeyTree = {"otherwise":k0,"eye":k0,"video":k0,"tape":k0,"ruler":k0,"alignment stick":k0,"goniometer":k0,"inclinometer":k0,"radar":k0,"camera":k0,"motion capture":k0,"pressure mat":k0,"force plate":k0,"ball mark":k0,"scale":k0,"loft and lie gauge":k0,"specification":k0,"rangefinder":k0,"pacing":k0,"map":k0,"stopwatch":k0,"weather report":k0,"anemometer":k0,"thermometer":k0,"barometer":k0,"hygrometer":k0,"*":k0};
const k66: KeyTree = {"like":k0,"title":k0,"meaning":k0,"from":k0,"to":k0,"unit":k0,"decimals":k0,"directions":k61,"lateral":k0,"bounds":k0,"practice":k0,"source":k0,"at":k23,"uncertainty":k65};
const k67: KeyTree = {"*":k66};
const k68: KeyTree = {"is":k0,"like":k0,"title":k0,"meaning":k0,"from":k0,"to":k0,"unit":k0,"decimals":k0,"directions":k61,"lateral":k0,"bounds":k0,"practice":k0,"source":k0,"uncertainty":k65};
const k69: KeyTree = {"*":k68};
const k70: KeyTree = {"says":k0,"because":k0};
const k71: KeyTree = {"*":k70};
const k72: KeyTree = {"when":k0,"message":k0,"severity":k0,"at":k0,"because":k0};
const k73: KeyTree = {"*":k72};
const k74: KeyTree = {"quantity":k0,"unit":k0,"by":k0};
const k75: KeyTree = {"*":k74};
const k76: KeyTree = {"by":k0,"columns":k75};
const k77: KeyTree = {"drag":k0,"lift":k0,"correlation":k0,"shots":k0,"ball_speed":k0};
const k78: KeyTree = {"swingwright":k0,"coverage":k0,"most_changes":k0,"language":k0,"severities":k61,"methods":k64,"quantities":k67,"derived":k69,"relations":k71,"checks":k73,"show":k61,"shots":k76,"calibration":k77,"notes":k0};

/** By kind of file, from its top-level keys on. */
export const knownKeys = {
  swing: k27,
  student: k32,
  template: k44,
  faults: k53,
  review: k60,
  workspace: k78,
} as const;
