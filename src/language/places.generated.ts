// Generated from the schemas by `npx tsx build/generate.ts`: what may stand at each place; do not edit.

export interface Place {
  /** What is written here: a mapping or a list only, or a value (which may have longer forms). */
  readonly holds: 'mapping' | 'list' | 'value';
  /** Where only some words may stand. */
  readonly words?: readonly string[];
  /** `*` stands for any key, `[]` for the items of a list. */
  readonly below?: { readonly [key: string]: Place };
}

const p0: Place = { holds: 'value', words: ["1"] };
const p1: Place = { holds: 'value' };
const p2: Place = { holds: 'value', words: ["en","de"] };
const p3: Place = { holds: 'value', words: ["true","false"] };
const p4: Place = { holds: 'value', below: { "value": p1, "give_or_take": p1, "by": p1, "note": p1, "doubtful": p3, "seen": p1 } };
const p5: Place = { holds: 'value', below: { "value": p1, "give_or_take": p1, "by": p1, "note": p1, "doubtful": p3, "seen": p1, "[]": p4 } };
const p6: Place = { holds: 'mapping', below: { "temperature": p5, "altitude": p5, "pressure": p5, "humidity": p5, "wind": p5 } };
const p7: Place = { holds: 'mapping', below: { "head": p5, "sternum": p5, "pelvis": p5, "lead_shoulder": p5, "hands": p5, "lead_knee": p5, "lead_pressure": p5, "shoulder_turn": p5, "pelvis_turn": p5, "shoulder_tilt": p5, "spine_tilt": p5, "forward_bend": p5, "lead_arm": p5, "lead_elbow_bend": p5, "trail_elbow_bend": p5, "lead_wrist_hinge": p5, "lead_wrist_bow": p5, "shaft_lean": p5, "shaft_inclination": p5, "hand_depth": p5, "pelvis_depth": p5, "head_height": p5, "time": p5, "stance_width": p5, "lead_foot_flare": p5, "trail_foot_flare": p5, "ball_position": p5, "stance_direction": p5, "shoulder_direction": p5 } };
const p8: Place = { holds: 'mapping', below: { "head": p5, "sternum": p5, "pelvis": p5, "lead_shoulder": p5, "hands": p5, "lead_knee": p5, "lead_pressure": p5, "shoulder_turn": p5, "pelvis_turn": p5, "shoulder_tilt": p5, "spine_tilt": p5, "forward_bend": p5, "lead_arm": p5, "lead_elbow_bend": p5, "trail_elbow_bend": p5, "lead_wrist_hinge": p5, "lead_wrist_bow": p5, "shaft_lean": p5, "shaft_inclination": p5, "hand_depth": p5, "pelvis_depth": p5, "head_height": p5, "time": p5 } };
const p9: Place = { holds: 'mapping', below: { "address": p7, "takeaway": p8, "lead_arm_parallel_back": p8, "top": p8, "lead_arm_parallel_down": p8, "shaft_parallel_down": p8, "impact": p8, "shaft_parallel_through": p8, "finish": p8 } };
const p10: Place = { holds: 'mapping', below: { "direction": p5, "inclination": p5, "radius": p5 } };
const p11: Place = { holds: 'mapping', below: { "ahead": p5, "depth": p5 } };
const p12: Place = { holds: 'mapping', below: { "club_speed": p5, "attack": p5, "path": p5, "face": p5, "face_to_path": p5, "delivered_loft": p5, "obliquity": p5, "release_ratio": p5, "arc": p10, "low_point": p11 } };
const p13: Place = { holds: 'mapping', below: { "starts": p5, "length": p5, "depth": p5, "direction": p5 } };
const p14: Place = { holds: 'mapping', below: { "divot": p13 } };
const p15: Place = { holds: 'mapping', below: { "across": p5, "height": p5 } };
const p16: Place = { holds: 'value', words: ["straight","draw","fade","push","pull","straight draw","straight fade","push draw","push fade","pull draw","pull fade","hook","slice","push hook","push slice","pull hook","pull slice"] };
const p17: Place = { holds: 'mapping', below: { "ball_speed": p5, "speed_ratio": p5, "launch_angle": p5, "start": p5, "spin": p5, "spin_tilt": p5, "carry": p5, "total": p5, "curve": p5, "finish": p5, "apex": p5, "descent": p5, "time": p5, "shape": p16 } };
const p18: Place = { holds: 'mapping', below: { "ball_speed": p5, "speed_ratio": p5, "launch_angle": p5, "start": p5, "spin": p5, "spin_tilt": p5, "carry": p5, "total": p5, "curve": p5, "finish": p5, "apex": p5, "descent": p5, "time": p5, "club_speed": p5, "attack": p5, "path": p5, "face": p5, "face_to_path": p5, "delivered_loft": p5, "obliquity": p5, "release_ratio": p5, "arc.direction": p5, "arc.inclination": p5, "arc.radius": p5, "low_point.ahead": p5, "low_point.depth": p5, "across": p5, "height": p5, "flight.ball_speed": p5, "flight.speed_ratio": p5, "flight.launch_angle": p5, "flight.start": p5, "flight.spin": p5, "flight.spin_tilt": p5, "flight.carry": p5, "flight.total": p5, "flight.curve": p5, "flight.finish": p5, "flight.apex": p5, "flight.descent": p5, "flight.time": p5, "delivery.club_speed": p5, "delivery.attack": p5, "delivery.path": p5, "delivery.face": p5, "delivery.face_to_path": p5, "delivery.delivered_loft": p5, "delivery.obliquity": p5, "delivery.release_ratio": p5, "delivery.arc.direction": p5, "delivery.arc.inclination": p5, "delivery.arc.radius": p5, "delivery.low_point.ahead": p5, "delivery.low_point.depth": p5, "strike.across": p5, "strike.height": p5, "shape": p16, "note": p1 } };
const p19: Place = { holds: 'value', below: { "[]": p18 } };
const p20: Place = { holds: 'value', words: ["address","takeaway","lead_arm_parallel_back","top","lead_arm_parallel_down","shaft_parallel_down","impact","shaft_parallel_through","finish"] };
const p21: Place = { holds: 'mapping', below: { "fault": p1, "at": p20, "note": p1 } };
const p22: Place = { holds: 'list', below: { "[]": p21 } };
const p23: Place = { holds: 'value', words: ["thin","topped","heavy","toe","heel","push","pull","slice","hook","right","left","low","high","short"] };
const p24: Place = { holds: 'value', words: ["thin","topped","heavy","toe","heel","push","pull","slice","hook","right","left","low","high","short"], below: { "miss": p23, "note": p1 } };
const p25: Place = { holds: 'list', below: { "[]": p24 } };
const p26: Place = { holds: 'value', below: { "value": p1, "note": p1 } };
const p27: Place = { holds: 'value', words: ["ball before turf","ball first","ball before the turf","ball then turf","turf after the ball","turf behind the ball","on the rise","upward","no turf","without turf","middle of the face","centre of the face","center of the face"] };
const p28: Place = { holds: 'mapping', below: { "shape": p16, "ball_speed": p26, "speed_ratio": p26, "launch_angle": p26, "start": p26, "spin": p26, "spin_tilt": p26, "carry": p26, "total": p26, "curve": p26, "finish": p26, "apex": p26, "descent": p26, "time": p26, "contact": p27, "club": p1, "note": p1 } };
const p29: Place = { holds: 'list', below: { "[]": p28 } };
const p30: Place = { holds: 'value', below: { "[]": p1 } };
const p31: Place = { holds: 'mapping', below: { "change": p1, "to": p26, "because": p30, "proof": p1, "feel": p1, "note": p1 } };
const p32: Place = { holds: 'list', below: { "[]": p31 } };
const p33: Place = { holds: 'mapping', below: { "*": p5 } };
const p34: Place = { holds: 'mapping', below: { "swing": p0, "student": p1, "date": p1, "club": p1, "language": p2, "template": p1, "faults_from": p1, "conditions": p6, "checkpoints": p9, "delivery": p12, "ground": p14, "strike": p15, "flight": p17, "shots": p19, "faults": p22, "misses": p25, "goals": p29, "plan": p32, "predicted": p33, "notes": p1 } };
const p35: Place = { holds: 'value', words: ["left","right"] };
const p36: Place = { holds: 'value', words: ["female","male","winter"] };
const p37: Place = { holds: 'value', words: ["driver","fairway","hybrid","iron","wedge"] };
const p38: Place = { holds: 'mapping', below: { "kind": p37, "loft": p5, "lie": p5, "length": p5, "head_mass": p5, "note": p1 } };
const p39: Place = { holds: 'mapping', below: { "*": p38 } };
const p40: Place = { holds: 'value', words: ["lead","trail","left","right","both"] };
const p41: Place = { holds: 'mapping', below: { "part": p1, "side": p40, "since": p1, "note": p1 } };
const p42: Place = { holds: 'list', below: { "[]": p41 } };
const p43: Place = { holds: 'mapping', below: { "student": p0, "name": p1, "born": p1, "language": p2, "hand": p35, "stature": p5, "mass": p5, "body_table": p36, "bag": p39, "goals": p29, "injuries": p42, "notes": p1 } };
const p44: Place = { holds: 'value', words: ["driver","fairway","hybrid","iron","wedge"], below: { "[]": p37 } };
const p45: Place = { holds: 'value', words: ["gentle","firm"] };
const p46: Place = { holds: 'value', below: { "window": p1, "strict": p45, "source": p1, "note": p1 } };
const p47: Place = { holds: 'mapping', below: { "head": p46, "sternum": p46, "pelvis": p46, "lead_shoulder": p46, "hands": p46, "lead_knee": p46, "lead_pressure": p46, "shoulder_turn": p46, "pelvis_turn": p46, "shoulder_tilt": p46, "spine_tilt": p46, "forward_bend": p46, "lead_arm": p46, "lead_elbow_bend": p46, "trail_elbow_bend": p46, "lead_wrist_hinge": p46, "lead_wrist_bow": p46, "shaft_lean": p46, "shaft_inclination": p46, "hand_depth": p46, "pelvis_depth": p46, "head_height": p46, "time": p46, "stance_width": p46, "lead_foot_flare": p46, "trail_foot_flare": p46, "ball_position": p46, "stance_direction": p46, "shoulder_direction": p46 } };
const p48: Place = { holds: 'mapping', below: { "head": p46, "sternum": p46, "pelvis": p46, "lead_shoulder": p46, "hands": p46, "lead_knee": p46, "lead_pressure": p46, "shoulder_turn": p46, "pelvis_turn": p46, "shoulder_tilt": p46, "spine_tilt": p46, "forward_bend": p46, "lead_arm": p46, "lead_elbow_bend": p46, "trail_elbow_bend": p46, "lead_wrist_hinge": p46, "lead_wrist_bow": p46, "shaft_lean": p46, "shaft_inclination": p46, "hand_depth": p46, "pelvis_depth": p46, "head_height": p46, "time": p46 } };
const p49: Place = { holds: 'mapping', below: { "address": p47, "takeaway": p48, "lead_arm_parallel_back": p48, "top": p48, "lead_arm_parallel_down": p48, "shaft_parallel_down": p48, "impact": p48, "shaft_parallel_through": p48, "finish": p48 } };
const p50: Place = { holds: 'mapping', below: { "direction": p46, "inclination": p46, "radius": p46 } };
const p51: Place = { holds: 'mapping', below: { "ahead": p46, "depth": p46 } };
const p52: Place = { holds: 'mapping', below: { "club_speed": p46, "attack": p46, "path": p46, "face": p46, "face_to_path": p46, "delivered_loft": p46, "obliquity": p46, "release_ratio": p46, "arc": p50, "low_point": p51 } };
const p53: Place = { holds: 'mapping', below: { "starts": p46, "length": p46, "depth": p46, "direction": p46 } };
const p54: Place = { holds: 'mapping', below: { "divot": p53 } };
const p55: Place = { holds: 'mapping', below: { "across": p46, "height": p46 } };
const p56: Place = { holds: 'mapping', below: { "ball_speed": p46, "speed_ratio": p46, "launch_angle": p46, "start": p46, "spin": p46, "spin_tilt": p46, "carry": p46, "total": p46, "curve": p46, "finish": p46, "apex": p46, "descent": p46, "time": p46 } };
const p57: Place = { holds: 'mapping', below: { "template": p0, "title": p1, "clubs": p44, "checkpoints": p49, "delivery": p52, "ground": p54, "strike": p55, "flight": p56, "notes": p1 } };
const p58: Place = { holds: 'value', words: ["address","takeaway","lead_arm_parallel_back","top","lead_arm_parallel_down","shaft_parallel_down","impact","shaft_parallel_through","finish"], below: { "[]": p20 } };
const p59: Place = { holds: 'value', below: { "expression": p1, "weight": p1 } };
const p60: Place = { holds: 'value', below: { "[]": p59 } };
const p61: Place = { holds: 'mapping', below: { "effect": p1, "direction": p1, "size": p1, "of": p1 } };
const p62: Place = { holds: 'list', below: { "[]": p61 } };
const p63: Place = { holds: 'value', words: ["setup","backswing","downswing"] };
const p64: Place = { holds: 'mapping', below: { "change": p1, "to": p1, "by": p1, "feel": p1, "when": p63 } };
const p65: Place = { holds: 'list', below: { "[]": p64 } };
const p66: Place = { holds: 'list', below: { "[]": p1 } };
const p67: Place = { holds: 'mapping', below: { "title": p1, "explanation": p1, "at": p58, "evidence": p60, "tends_to": p62, "changes": p65, "cautions": p66, "drills": p66 } };
const p68: Place = { holds: 'mapping', below: { "*": p67 } };
const p69: Place = { holds: 'mapping', below: { "faults": p0, "title": p1, "extends": p1, "book": p68, "notes": p1 } };
const p70: Place = { holds: 'value', words: ["open","answered","settled"] };
const p71: Place = { holds: 'mapping', below: { "author": p1, "time": p1, "state": p70, "text": p1, "suggests": p1 } };
const p72: Place = { holds: 'list', below: { "[]": p71 } };
const p73: Place = { holds: 'mapping', below: { "id": p1, "about": p1, "value": p1, "author": p1, "time": p1, "state": p70, "text": p1, "suggests": p1, "replies": p72 } };
const p74: Place = { holds: 'list', below: { "[]": p73 } };
const p75: Place = { holds: 'mapping', below: { "by": p1, "time": p1, "hash": p1 } };
const p76: Place = { holds: 'list', below: { "[]": p75 } };
const p77: Place = { holds: 'mapping', below: { "review": p0, "of": p1, "threads": p74, "signed_off": p76, "notes": p1 } };
const p78: Place = { holds: 'value', words: ["error","warning","information","hint","off"] };
const p79: Place = { holds: 'mapping', below: { "*": p78 } };
const p80: Place = { holds: 'mapping', below: { "length": p1, "angle": p1, "speed": p1, "rotation": p1, "time": p1, "mass": p1, "inertia": p1, "temperature": p1, "pressure": p1, "fraction": p1, "ratio": p1, "*": p1 } };
const p81: Place = { holds: 'mapping', below: { "meaning": p1, "uncertainty": p80 } };
const p82: Place = { holds: 'mapping', below: { "eye": p81, "video": p81, "tape": p81, "ruler": p81, "alignment stick": p81, "goniometer": p81, "inclinometer": p81, "radar": p81, "camera": p81, "motion capture": p81, "pressure mat": p81, "force plate": p81, "ball mark": p81, "scale": p81, "loft and lie gauge": p81, "specification": p81, "rangefinder": p81, "pacing": p81, "map": p81, "stopwatch": p81, "weather report": p81, "anemometer": p81, "thermometer": p81, "barometer": p81, "hygrometer": p81, "*": p81 } };
const p83: Place = { holds: 'value', words: ["positive","negative"] };
const p84: Place = { holds: 'mapping', below: { "*": p83 } };
const p85: Place = { holds: 'value', below: { "otherwise": p1, "eye": p1, "video": p1, "tape": p1, "ruler": p1, "alignment stick": p1, "goniometer": p1, "inclinometer": p1, "radar": p1, "camera": p1, "motion capture": p1, "pressure mat": p1, "force plate": p1, "ball mark": p1, "scale": p1, "loft and lie gauge": p1, "specification": p1, "rangefinder": p1, "pacing": p1, "map": p1, "stopwatch": p1, "weather report": p1, "anemometer": p1, "thermometer": p1, "barometer": p1, "hygrometer": p1, "*": p1 } };
const p86: Place = { holds: 'mapping', below: { "like": p1, "title": p1, "meaning": p1, "from": p1, "to": p1, "unit": p1, "decimals": p1, "directions": p84, "lateral": p3, "bounds": p1, "practice": p1, "source": p1, "at": p58, "uncertainty": p85 } };
const p87: Place = { holds: 'mapping', below: { "*": p86 } };
const p88: Place = { holds: 'mapping', below: { "is": p1, "like": p1, "title": p1, "meaning": p1, "from": p1, "to": p1, "unit": p1, "decimals": p1, "directions": p84, "lateral": p3, "bounds": p1, "practice": p1, "source": p1, "uncertainty": p85 } };
const p89: Place = { holds: 'mapping', below: { "*": p88 } };
const p90: Place = { holds: 'mapping', below: { "says": p1, "because": p1 } };
const p91: Place = { holds: 'mapping', below: { "*": p90 } };
const p92: Place = { holds: 'value', words: ["error","warning","information","hint"] };
const p93: Place = { holds: 'mapping', below: { "when": p1, "message": p1, "severity": p92, "at": p1, "because": p1 } };
const p94: Place = { holds: 'mapping', below: { "*": p93 } };
const p95: Place = { holds: 'mapping', below: { "*": p1 } };
const p96: Place = { holds: 'value', below: { "quantity": p1, "unit": p1, "by": p1 } };
const p97: Place = { holds: 'mapping', below: { "*": p96 } };
const p98: Place = { holds: 'mapping', below: { "by": p1, "columns": p97 } };
const p99: Place = { holds: 'mapping', below: { "drag": p1, "lift": p1, "correlation": p1, "shots": p1, "ball_speed": p1 } };
const p100: Place = { holds: 'mapping', below: { "swingwright": p0, "coverage": p1, "most_changes": p1, "language": p2, "severities": p79, "methods": p82, "quantities": p87, "derived": p89, "relations": p91, "checks": p94, "show": p95, "shots": p98, "calibration": p99, "notes": p1 } };

/** By kind of file, from the whole file down. */
export const places = {
  swing: p34,
  student: p43,
  template: p57,
  faults: p69,
  review: p77,
  workspace: p100,
} as const;
