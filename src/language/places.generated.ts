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
const p26: Place = { holds: 'value', words: ["ball before turf","ball first","ball before the turf","ball then turf","turf after the ball","turf behind the ball","on the rise","upward","no turf","without turf","middle of the face","centre of the face","center of the face"] };
const p27: Place = { holds: 'mapping', below: { "shape": p15, "ball_speed": p25, "speed_ratio": p25, "launch_angle": p25, "start": p25, "spin": p25, "spin_tilt": p25, "carry": p25, "total": p25, "curve": p25, "finish": p25, "apex": p25, "descent": p25, "time": p25, "contact": p26, "club": p1, "note": p1 } };
const p28: Place = { holds: 'list', below: { "[]": p27 } };
const p29: Place = { holds: 'value', below: { "[]": p1 } };
const p30: Place = { holds: 'mapping', below: { "change": p1, "to": p25, "because": p29, "proof": p1, "note": p1 } };
const p31: Place = { holds: 'list', below: { "[]": p30 } };
const p32: Place = { holds: 'mapping', below: { "*": p4 } };
const p33: Place = { holds: 'mapping', below: { "swing": p0, "student": p1, "date": p1, "club": p1, "template": p1, "faults_from": p1, "conditions": p5, "checkpoints": p8, "delivery": p11, "ground": p13, "strike": p14, "flight": p16, "shots": p18, "faults": p21, "misses": p24, "goals": p28, "plan": p31, "predicted": p32, "notes": p1 } };
const p34: Place = { holds: 'value', words: ["left","right"] };
const p35: Place = { holds: 'value', words: ["female","male","winter"] };
const p36: Place = { holds: 'value', words: ["driver","fairway","hybrid","iron","wedge"] };
const p37: Place = { holds: 'mapping', below: { "kind": p36, "loft": p4, "lie": p4, "length": p4, "head_mass": p4, "note": p1 } };
const p38: Place = { holds: 'mapping', below: { "*": p37 } };
const p39: Place = { holds: 'value', words: ["lead","trail","left","right","both"] };
const p40: Place = { holds: 'mapping', below: { "part": p1, "side": p39, "since": p1, "note": p1 } };
const p41: Place = { holds: 'list', below: { "[]": p40 } };
const p42: Place = { holds: 'mapping', below: { "student": p0, "name": p1, "born": p1, "hand": p34, "stature": p4, "mass": p4, "body_table": p35, "bag": p38, "goals": p28, "injuries": p41, "notes": p1 } };
const p43: Place = { holds: 'value', words: ["driver","fairway","hybrid","iron","wedge"], below: { "[]": p36 } };
const p44: Place = { holds: 'value', words: ["gentle","firm"] };
const p45: Place = { holds: 'value', below: { "window": p1, "strict": p44, "source": p1, "note": p1 } };
const p46: Place = { holds: 'mapping', below: { "head": p45, "sternum": p45, "pelvis": p45, "lead_shoulder": p45, "hands": p45, "lead_knee": p45, "lead_pressure": p45, "shoulder_turn": p45, "pelvis_turn": p45, "shoulder_tilt": p45, "spine_tilt": p45, "forward_bend": p45, "lead_arm": p45, "lead_elbow_bend": p45, "trail_elbow_bend": p45, "lead_wrist_hinge": p45, "lead_wrist_bow": p45, "shaft_lean": p45, "shaft_inclination": p45, "hand_depth": p45, "pelvis_depth": p45, "head_height": p45, "time": p45, "stance_width": p45, "lead_foot_flare": p45, "trail_foot_flare": p45, "ball_position": p45, "stance_direction": p45, "shoulder_direction": p45 } };
const p47: Place = { holds: 'mapping', below: { "head": p45, "sternum": p45, "pelvis": p45, "lead_shoulder": p45, "hands": p45, "lead_knee": p45, "lead_pressure": p45, "shoulder_turn": p45, "pelvis_turn": p45, "shoulder_tilt": p45, "spine_tilt": p45, "forward_bend": p45, "lead_arm": p45, "lead_elbow_bend": p45, "trail_elbow_bend": p45, "lead_wrist_hinge": p45, "lead_wrist_bow": p45, "shaft_lean": p45, "shaft_inclination": p45, "hand_depth": p45, "pelvis_depth": p45, "head_height": p45, "time": p45 } };
const p48: Place = { holds: 'mapping', below: { "address": p46, "takeaway": p47, "lead_arm_parallel_back": p47, "top": p47, "lead_arm_parallel_down": p47, "shaft_parallel_down": p47, "impact": p47, "shaft_parallel_through": p47, "finish": p47 } };
const p49: Place = { holds: 'mapping', below: { "direction": p45, "inclination": p45, "radius": p45 } };
const p50: Place = { holds: 'mapping', below: { "ahead": p45, "depth": p45 } };
const p51: Place = { holds: 'mapping', below: { "club_speed": p45, "attack": p45, "path": p45, "face": p45, "face_to_path": p45, "delivered_loft": p45, "obliquity": p45, "release_ratio": p45, "arc": p49, "low_point": p50 } };
const p52: Place = { holds: 'mapping', below: { "starts": p45, "length": p45, "depth": p45, "direction": p45 } };
const p53: Place = { holds: 'mapping', below: { "divot": p52 } };
const p54: Place = { holds: 'mapping', below: { "across": p45, "height": p45 } };
const p55: Place = { holds: 'mapping', below: { "ball_speed": p45, "speed_ratio": p45, "launch_angle": p45, "start": p45, "spin": p45, "spin_tilt": p45, "carry": p45, "total": p45, "curve": p45, "finish": p45, "apex": p45, "descent": p45, "time": p45 } };
const p56: Place = { holds: 'mapping', below: { "template": p0, "title": p1, "clubs": p43, "checkpoints": p48, "delivery": p51, "ground": p53, "strike": p54, "flight": p55, "notes": p1 } };
const p57: Place = { holds: 'value', words: ["address","takeaway","lead_arm_parallel_back","top","lead_arm_parallel_down","shaft_parallel_down","impact","shaft_parallel_through","finish"], below: { "[]": p19 } };
const p58: Place = { holds: 'value', below: { "expression": p1, "weight": p1 } };
const p59: Place = { holds: 'value', below: { "[]": p58 } };
const p60: Place = { holds: 'mapping', below: { "effect": p1, "direction": p1, "size": p1, "of": p1 } };
const p61: Place = { holds: 'list', below: { "[]": p60 } };
const p62: Place = { holds: 'value', words: ["setup","backswing","downswing"] };
const p63: Place = { holds: 'mapping', below: { "change": p1, "to": p1, "by": p1, "when": p62 } };
const p64: Place = { holds: 'list', below: { "[]": p63 } };
const p65: Place = { holds: 'list', below: { "[]": p1 } };
const p66: Place = { holds: 'mapping', below: { "title": p1, "explanation": p1, "at": p57, "evidence": p59, "tends_to": p61, "changes": p64, "cautions": p65, "drills": p65 } };
const p67: Place = { holds: 'mapping', below: { "*": p66 } };
const p68: Place = { holds: 'mapping', below: { "faults": p0, "title": p1, "extends": p1, "book": p67, "notes": p1 } };
const p69: Place = { holds: 'value', words: ["open","answered","settled"] };
const p70: Place = { holds: 'mapping', below: { "author": p1, "time": p1, "state": p69, "text": p1, "suggests": p1 } };
const p71: Place = { holds: 'list', below: { "[]": p70 } };
const p72: Place = { holds: 'mapping', below: { "id": p1, "about": p1, "value": p1, "author": p1, "time": p1, "state": p69, "text": p1, "suggests": p1, "replies": p71 } };
const p73: Place = { holds: 'list', below: { "[]": p72 } };
const p74: Place = { holds: 'mapping', below: { "by": p1, "time": p1, "hash": p1 } };
const p75: Place = { holds: 'list', below: { "[]": p74 } };
const p76: Place = { holds: 'mapping', below: { "review": p0, "of": p1, "threads": p73, "signed_off": p75, "notes": p1 } };
const p77: Place = { holds: 'value', words: ["error","warning","information","hint","off"] };
const p78: Place = { holds: 'mapping', below: { "*": p77 } };
const p79: Place = { holds: 'mapping', below: { "length": p1, "angle": p1, "speed": p1, "rotation": p1, "time": p1, "mass": p1, "inertia": p1, "temperature": p1, "pressure": p1, "fraction": p1, "ratio": p1 } };
const p80: Place = { holds: 'mapping', below: { "meaning": p1, "uncertainty": p79 } };
const p81: Place = { holds: 'mapping', below: { "eye": p80, "video": p80, "tape": p80, "ruler": p80, "alignment stick": p80, "goniometer": p80, "inclinometer": p80, "radar": p80, "camera": p80, "motion capture": p80, "pressure mat": p80, "force plate": p80, "ball mark": p80, "scale": p80, "loft and lie gauge": p80, "specification": p80, "rangefinder": p80, "pacing": p80, "map": p80, "stopwatch": p80, "weather report": p80, "anemometer": p80, "thermometer": p80, "barometer": p80, "hygrometer": p80, "*": p80 } };
const p82: Place = { holds: 'value', words: ["positive","negative"] };
const p83: Place = { holds: 'mapping', below: { "*": p82 } };
const p84: Place = { holds: 'value', below: { "otherwise": p1, "eye": p1, "video": p1, "tape": p1, "ruler": p1, "alignment stick": p1, "goniometer": p1, "inclinometer": p1, "radar": p1, "camera": p1, "motion capture": p1, "pressure mat": p1, "force plate": p1, "ball mark": p1, "scale": p1, "loft and lie gauge": p1, "specification": p1, "rangefinder": p1, "pacing": p1, "map": p1, "stopwatch": p1, "weather report": p1, "anemometer": p1, "thermometer": p1, "barometer": p1, "hygrometer": p1, "*": p1 } };
const p85: Place = { holds: 'mapping', below: { "like": p1, "title": p1, "meaning": p1, "from": p1, "to": p1, "unit": p1, "decimals": p1, "directions": p83, "lateral": p2, "bounds": p1, "practice": p1, "source": p1, "at": p57, "uncertainty": p84 } };
const p86: Place = { holds: 'mapping', below: { "*": p85 } };
const p87: Place = { holds: 'mapping', below: { "is": p1, "like": p1, "title": p1, "meaning": p1, "from": p1, "to": p1, "unit": p1, "decimals": p1, "directions": p83, "lateral": p2, "bounds": p1, "practice": p1, "source": p1, "uncertainty": p84 } };
const p88: Place = { holds: 'mapping', below: { "*": p87 } };
const p89: Place = { holds: 'mapping', below: { "says": p1, "because": p1 } };
const p90: Place = { holds: 'mapping', below: { "*": p89 } };
const p91: Place = { holds: 'value', words: ["error","warning","information","hint"] };
const p92: Place = { holds: 'mapping', below: { "when": p1, "message": p1, "severity": p91, "at": p1, "because": p1 } };
const p93: Place = { holds: 'mapping', below: { "*": p92 } };
const p94: Place = { holds: 'mapping', below: { "*": p1 } };
const p95: Place = { holds: 'value', below: { "quantity": p1, "unit": p1, "by": p1 } };
const p96: Place = { holds: 'mapping', below: { "*": p95 } };
const p97: Place = { holds: 'mapping', below: { "by": p1, "columns": p96 } };
const p98: Place = { holds: 'mapping', below: { "drag": p1, "lift": p1, "correlation": p1, "shots": p1, "ball_speed": p1 } };
const p99: Place = { holds: 'mapping', below: { "swingwright": p0, "coverage": p1, "most_changes": p1, "severities": p78, "methods": p81, "quantities": p86, "derived": p88, "relations": p90, "checks": p93, "show": p94, "shots": p97, "calibration": p98, "notes": p1 } };

/** By kind of file, from the whole file down. */
export const places = {
  swing: p33,
  student: p42,
  template: p56,
  faults: p68,
  review: p76,
  workspace: p99,
} as const;
