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
const p2: Place = { holds: 'value', words: ["true","false"] };
const p3: Place = { holds: 'value', below: { "value": p1, "give_or_take": p1, "by": p1, "note": p1, "doubtful": p2, "seen": p1 } };
const p4: Place = { holds: 'value', below: { "value": p1, "give_or_take": p1, "by": p1, "note": p1, "doubtful": p2, "seen": p1, "[]": p3 } };
const p5: Place = { holds: 'mapping', below: { "temperature": p4, "altitude": p4, "pressure": p4, "humidity": p4, "wind": p4 } };
const p6: Place = { holds: 'mapping', below: { "head": p4, "sternum": p4, "pelvis": p4, "lead_shoulder": p4, "hands": p4, "lead_knee": p4, "lead_pressure": p4, "shoulder_turn": p4, "pelvis_turn": p4, "shoulder_tilt": p4, "spine_tilt": p4, "forward_bend": p4, "lead_arm": p4, "lead_elbow_bend": p4, "trail_elbow_bend": p4, "lead_wrist_hinge": p4, "lead_wrist_bow": p4, "shaft_lean": p4, "shaft_inclination": p4, "hand_depth": p4, "pelvis_depth": p4, "head_height": p4, "time": p4, "stance_width": p4, "lead_foot_flare": p4, "trail_foot_flare": p4, "ball_position": p4, "stance_direction": p4, "shoulder_direction": p4 } };
const p7: Place = { holds: 'mapping', below: { "head": p4, "sternum": p4, "pelvis": p4, "lead_shoulder": p4, "hands": p4, "lead_knee": p4, "lead_pressure": p4, "shoulder_turn": p4, "pelvis_turn": p4, "shoulder_tilt": p4, "spine_tilt": p4, "forward_bend": p4, "lead_arm": p4, "lead_elbow_bend": p4, "trail_elbow_bend": p4, "lead_wrist_hinge": p4, "lead_wrist_bow": p4, "shaft_lean": p4, "shaft_inclination": p4, "hand_depth": p4, "pelvis_depth": p4, "head_height": p4, "time": p4 } };
const p8: Place = { holds: 'mapping', below: { "address": p6, "takeaway": p7, "lead_arm_parallel_back": p7, "top": p7, "lead_arm_parallel_down": p7, "shaft_parallel_down": p7, "impact": p7, "shaft_parallel_through": p7, "finish": p7 } };
const p9: Place = { holds: 'mapping', below: { "direction": p4, "inclination": p4, "radius": p4 } };
const p10: Place = { holds: 'mapping', below: { "ahead": p4, "depth": p4 } };
const p11: Place = { holds: 'mapping', below: { "club_speed": p4, "attack": p4, "path": p4, "face": p4, "face_to_path": p4, "delivered_loft": p4, "obliquity": p4, "release_ratio": p4, "arc": p9, "low_point": p10 } };
const p12: Place = { holds: 'mapping', below: { "starts": p4, "length": p4, "depth": p4, "direction": p4 } };
const p13: Place = { holds: 'mapping', below: { "divot": p12 } };
const p14: Place = { holds: 'mapping', below: { "across": p4, "height": p4 } };
const p15: Place = { holds: 'value', words: ["straight","draw","fade","push","pull","straight draw","straight fade","push draw","push fade","pull draw","pull fade","hook","slice","push hook","push slice","pull hook","pull slice"] };
const p16: Place = { holds: 'mapping', below: { "ball_speed": p4, "speed_ratio": p4, "launch_angle": p4, "start": p4, "spin": p4, "spin_tilt": p4, "carry": p4, "total": p4, "curve": p4, "finish": p4, "apex": p4, "descent": p4, "time": p4, "shape": p15 } };
const p17: Place = { holds: 'mapping', below: { "ball_speed": p4, "speed_ratio": p4, "launch_angle": p4, "start": p4, "spin": p4, "spin_tilt": p4, "carry": p4, "total": p4, "curve": p4, "finish": p4, "apex": p4, "descent": p4, "time": p4, "club_speed": p4, "attack": p4, "path": p4, "face": p4, "face_to_path": p4, "delivered_loft": p4, "obliquity": p4, "release_ratio": p4, "arc.direction": p4, "arc.inclination": p4, "arc.radius": p4, "low_point.ahead": p4, "low_point.depth": p4, "across": p4, "height": p4, "flight.ball_speed": p4, "flight.speed_ratio": p4, "flight.launch_angle": p4, "flight.start": p4, "flight.spin": p4, "flight.spin_tilt": p4, "flight.carry": p4, "flight.total": p4, "flight.curve": p4, "flight.finish": p4, "flight.apex": p4, "flight.descent": p4, "flight.time": p4, "delivery.club_speed": p4, "delivery.attack": p4, "delivery.path": p4, "delivery.face": p4, "delivery.face_to_path": p4, "delivery.delivered_loft": p4, "delivery.obliquity": p4, "delivery.release_ratio": p4, "delivery.arc.direction": p4, "delivery.arc.inclination": p4, "delivery.arc.radius": p4, "delivery.low_point.ahead": p4, "delivery.low_point.depth": p4, "strike.across": p4, "strike.height": p4, "shape": p15, "note": p1 } };
const p18: Place = { holds: 'value', below: { "[]": p17 } };
const p19: Place = { holds: 'value', words: ["address","takeaway","lead_arm_parallel_back","top","lead_arm_parallel_down","shaft_parallel_down","impact","shaft_parallel_through","finish"] };
const p20: Place = { holds: 'mapping', below: { "fault": p1, "at": p19, "note": p1 } };
const p21: Place = { holds: 'list', below: { "[]": p20 } };
const p22: Place = { holds: 'value', words: ["thin","topped","heavy","toe","heel","push","pull","slice","hook","right","left","low","high","short"] };
const p23: Place = { holds: 'value', words: ["thin","topped","heavy","toe","heel","push","pull","slice","hook","right","left","low","high","short"], below: { "miss": p22, "note": p1 } };
const p24: Place = { holds: 'list', below: { "[]": p23 } };
const p25: Place = { holds: 'value', below: { "value": p1, "note": p1 } };
const p26: Place = { holds: 'mapping', below: { "shape": p15, "ball_speed": p25, "speed_ratio": p25, "launch_angle": p25, "start": p25, "spin": p25, "spin_tilt": p25, "carry": p25, "total": p25, "curve": p25, "finish": p25, "apex": p25, "descent": p25, "time": p25, "contact": p1, "club": p1, "note": p1 } };
const p27: Place = { holds: 'list', below: { "[]": p26 } };
const p28: Place = { holds: 'value', below: { "[]": p1 } };
const p29: Place = { holds: 'mapping', below: { "change": p1, "to": p25, "because": p28, "proof": p1, "note": p1 } };
const p30: Place = { holds: 'list', below: { "[]": p29 } };
const p31: Place = { holds: 'mapping', below: { "swing": p0, "student": p1, "date": p1, "club": p1, "template": p1, "faults_from": p1, "conditions": p5, "checkpoints": p8, "delivery": p11, "ground": p13, "strike": p14, "flight": p16, "shots": p18, "faults": p21, "misses": p24, "goals": p27, "plan": p30, "notes": p1 } };
const p32: Place = { holds: 'value', words: ["left","right"] };
const p33: Place = { holds: 'value', words: ["female","male","winter"] };
const p34: Place = { holds: 'value', words: ["driver","fairway","hybrid","iron","wedge"] };
const p35: Place = { holds: 'mapping', below: { "kind": p34, "loft": p4, "lie": p4, "length": p4, "head_mass": p4, "note": p1 } };
const p36: Place = { holds: 'mapping', below: { "*": p35 } };
const p37: Place = { holds: 'value', words: ["lead","trail","left","right","both"] };
const p38: Place = { holds: 'mapping', below: { "part": p1, "side": p37, "since": p1, "note": p1 } };
const p39: Place = { holds: 'list', below: { "[]": p38 } };
const p40: Place = { holds: 'mapping', below: { "student": p0, "name": p1, "born": p1, "hand": p32, "stature": p4, "mass": p4, "body_table": p33, "bag": p36, "goals": p27, "injuries": p39, "notes": p1 } };
const p41: Place = { holds: 'value', words: ["driver","fairway","hybrid","iron","wedge"], below: { "[]": p34 } };
const p42: Place = { holds: 'value', words: ["gentle","firm"] };
const p43: Place = { holds: 'value', below: { "window": p1, "strict": p42, "source": p1, "note": p1 } };
const p44: Place = { holds: 'mapping', below: { "head": p43, "sternum": p43, "pelvis": p43, "lead_shoulder": p43, "hands": p43, "lead_knee": p43, "lead_pressure": p43, "shoulder_turn": p43, "pelvis_turn": p43, "shoulder_tilt": p43, "spine_tilt": p43, "forward_bend": p43, "lead_arm": p43, "lead_elbow_bend": p43, "trail_elbow_bend": p43, "lead_wrist_hinge": p43, "lead_wrist_bow": p43, "shaft_lean": p43, "shaft_inclination": p43, "hand_depth": p43, "pelvis_depth": p43, "head_height": p43, "time": p43, "stance_width": p43, "lead_foot_flare": p43, "trail_foot_flare": p43, "ball_position": p43, "stance_direction": p43, "shoulder_direction": p43 } };
const p45: Place = { holds: 'mapping', below: { "head": p43, "sternum": p43, "pelvis": p43, "lead_shoulder": p43, "hands": p43, "lead_knee": p43, "lead_pressure": p43, "shoulder_turn": p43, "pelvis_turn": p43, "shoulder_tilt": p43, "spine_tilt": p43, "forward_bend": p43, "lead_arm": p43, "lead_elbow_bend": p43, "trail_elbow_bend": p43, "lead_wrist_hinge": p43, "lead_wrist_bow": p43, "shaft_lean": p43, "shaft_inclination": p43, "hand_depth": p43, "pelvis_depth": p43, "head_height": p43, "time": p43 } };
const p46: Place = { holds: 'mapping', below: { "address": p44, "takeaway": p45, "lead_arm_parallel_back": p45, "top": p45, "lead_arm_parallel_down": p45, "shaft_parallel_down": p45, "impact": p45, "shaft_parallel_through": p45, "finish": p45 } };
const p47: Place = { holds: 'mapping', below: { "direction": p43, "inclination": p43, "radius": p43 } };
const p48: Place = { holds: 'mapping', below: { "ahead": p43, "depth": p43 } };
const p49: Place = { holds: 'mapping', below: { "club_speed": p43, "attack": p43, "path": p43, "face": p43, "face_to_path": p43, "delivered_loft": p43, "obliquity": p43, "release_ratio": p43, "arc": p47, "low_point": p48 } };
const p50: Place = { holds: 'mapping', below: { "starts": p43, "length": p43, "depth": p43, "direction": p43 } };
const p51: Place = { holds: 'mapping', below: { "divot": p50 } };
const p52: Place = { holds: 'mapping', below: { "across": p43, "height": p43 } };
const p53: Place = { holds: 'mapping', below: { "ball_speed": p43, "speed_ratio": p43, "launch_angle": p43, "start": p43, "spin": p43, "spin_tilt": p43, "carry": p43, "total": p43, "curve": p43, "finish": p43, "apex": p43, "descent": p43, "time": p43 } };
const p54: Place = { holds: 'mapping', below: { "template": p0, "title": p1, "clubs": p41, "checkpoints": p46, "delivery": p49, "ground": p51, "strike": p52, "flight": p53, "notes": p1 } };
const p55: Place = { holds: 'value', words: ["address","takeaway","lead_arm_parallel_back","top","lead_arm_parallel_down","shaft_parallel_down","impact","shaft_parallel_through","finish"], below: { "[]": p19 } };
const p56: Place = { holds: 'value', below: { "expression": p1, "weight": p1 } };
const p57: Place = { holds: 'value', below: { "[]": p56 } };
const p58: Place = { holds: 'mapping', below: { "effect": p1, "direction": p1, "size": p1 } };
const p59: Place = { holds: 'list', below: { "[]": p58 } };
const p60: Place = { holds: 'value', words: ["setup","backswing","downswing"] };
const p61: Place = { holds: 'mapping', below: { "change": p1, "to": p1, "by": p1, "when": p60 } };
const p62: Place = { holds: 'list', below: { "[]": p61 } };
const p63: Place = { holds: 'list', below: { "[]": p1 } };
const p64: Place = { holds: 'mapping', below: { "title": p1, "explanation": p1, "at": p55, "evidence": p57, "tends_to": p59, "changes": p62, "cautions": p63, "drills": p63 } };
const p65: Place = { holds: 'mapping', below: { "*": p64 } };
const p66: Place = { holds: 'mapping', below: { "faults": p0, "title": p1, "extends": p1, "book": p65, "notes": p1 } };
const p67: Place = { holds: 'value', words: ["open","answered","settled"] };
const p68: Place = { holds: 'mapping', below: { "author": p1, "time": p1, "text": p1 } };
const p69: Place = { holds: 'list', below: { "[]": p68 } };
const p70: Place = { holds: 'mapping', below: { "id": p1, "about": p1, "value": p1, "author": p1, "time": p1, "state": p67, "text": p1, "replies": p69 } };
const p71: Place = { holds: 'list', below: { "[]": p70 } };
const p72: Place = { holds: 'mapping', below: { "review": p0, "of": p1, "threads": p71, "notes": p1 } };
const p73: Place = { holds: 'value', words: ["error","warning","information","hint","off"] };
const p74: Place = { holds: 'mapping', below: { "*": p73 } };
const p75: Place = { holds: 'mapping', below: { "length": p1, "angle": p1, "speed": p1, "rotation": p1, "time": p1, "mass": p1, "inertia": p1, "temperature": p1, "pressure": p1, "fraction": p1, "ratio": p1 } };
const p76: Place = { holds: 'mapping', below: { "meaning": p1, "uncertainty": p75 } };
const p77: Place = { holds: 'mapping', below: { "eye": p76, "video": p76, "tape": p76, "ruler": p76, "alignment stick": p76, "goniometer": p76, "inclinometer": p76, "radar": p76, "camera": p76, "motion capture": p76, "pressure mat": p76, "force plate": p76, "ball mark": p76, "scale": p76, "loft and lie gauge": p76, "specification": p76, "rangefinder": p76, "pacing": p76, "map": p76, "stopwatch": p76, "weather report": p76, "anemometer": p76, "thermometer": p76, "barometer": p76, "hygrometer": p76, "*": p76 } };
const p78: Place = { holds: 'value', below: { "quantity": p1, "unit": p1, "by": p1 } };
const p79: Place = { holds: 'mapping', below: { "*": p78 } };
const p80: Place = { holds: 'mapping', below: { "by": p1, "columns": p79 } };
const p81: Place = { holds: 'mapping', below: { "drag": p1, "lift": p1, "correlation": p1, "shots": p1, "ball_speed": p1 } };
const p82: Place = { holds: 'mapping', below: { "swingwright": p0, "coverage": p1, "severities": p74, "methods": p77, "shots": p80, "calibration": p81, "notes": p1 } };

/** By kind of file, from the whole file down. */
export const places = {
  swing: p31,
  student: p40,
  template: p54,
  faults: p66,
  review: p72,
  workspace: p82,
} as const;
