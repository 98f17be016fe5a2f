# The same flights as trajectory.ts by SciPy's DOP853, at the loosest relative tolerance that keeps the carry; prints JSON.
import json
import math
import sys
import time

from scipy.integrate import solve_ivp

GRAVITY = 9.80665
LONGEST = 60.0
WEIGHTS = (10.0, 10.0, 10.0, 10.0, 10.0, 10.0, 100.0)


def forces(job, launch):
    radius, mass = job["ball"]["radius"], job["ball"]["mass"]
    force = 0.5 * job["air"]["density"] * math.pi * radius * radius / mass
    reynolds = 2 * radius / job["air"]["kinematicViscosity"]
    decay = 2.0e-5 / radius
    level = -math.cos(launch["spinTilt"])
    ax = level * math.sin(launch["start"])
    ay = level * math.cos(launch["start"])
    az = -math.sin(launch["spinTilt"])

    def derivative(_t, y):
        _, _, _, ux, uy, uz, spin = y.tolist()
        speed = math.sqrt(ux * ux + uy * uy + uz * uz)
        sx, sy, sz = ay * uz - az * uy, az * ux - ax * uz, ax * uy - ay * ux
        side = math.sqrt(sx * sx + sy * sy + sz * sz)
        re = min(2.1e5, max(7e4, reynolds * speed))
        s = min(0.6, radius * spin * side / (speed * speed))
        drag = force * speed * (0.24 + 0.18 * s + 0.06 * math.sin(math.pi * (re - 9e4) / 2e5))
        lift = force * speed * speed * 0.54 * s**0.4 / side if side > 1e-9 * speed else 0.0
        return (
            ux,
            uy,
            uz,
            lift * sx - drag * ux,
            lift * sy - drag * uy,
            lift * sz - drag * uz - GRAVITY,
            -decay * spin * speed,
        )

    return derivative


def apex(_t, y):
    return y[5]


def landing(t, y):
    return y[2] if t > 0 else 1.0


apex.direction = -1
landing.direction = -1
landing.terminal = True


def carry(job, launch, tolerance):
    level = launch["ballSpeed"] * math.cos(launch["launchAngle"])
    initial = (
        0.0,
        0.0,
        0.0,
        level * math.cos(launch["start"]),
        -level * math.sin(launch["start"]),
        launch["ballSpeed"] * math.sin(launch["launchAngle"]),
        launch["spin"],
    )
    solution = solve_ivp(
        forces(job, launch),
        (0.0, LONGEST),
        initial,
        method="DOP853",
        events=(apex, landing),
        rtol=tolerance,
        atol=[tolerance * weight for weight in WEIGHTS],
        first_step=0.1,
    )
    if not len(solution.y_events[1]):
        return math.nan
    last = solution.y_events[1][0]
    return math.hypot(last[0], last[1])


def main():
    job = json.load(sys.stdin)
    launches = job["launches"]
    exact = [carry(job, launch, 1e-11) for launch in launches]
    for tolerance in job["tolerances"]:
        worst = max(abs(carry(job, launch, tolerance) - e) for launch, e in zip(launches, exact))
        if worst <= job["accuracy"]:
            break
    best = math.inf
    for _ in range(5):
        began = time.perf_counter()
        for launch in launches:
            carry(job, launch, tolerance)
        best = min(best, (time.perf_counter() - began) / len(launches))
    json.dump({"seconds": best, "tolerance": tolerance, "worst": worst, "carries": exact}, sys.stdout)


main()
