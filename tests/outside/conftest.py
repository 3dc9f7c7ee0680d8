"""Open musculoskeletal models, used for checks only: legs after Rajagopal and others 2016, a second skeleton after
Delp and others 1990, an arm and a torso, all as myo-sim packages them.

Angles in degrees as the catalogue writes them; lengths and moment arms in cm.
"""

from __future__ import annotations

import warnings

import mujoco
import myo_sim
import numpy as np
import pytest

mujoco.set_mju_user_warning(lambda _: None)

JOINTS = {"hip": "hip_flexion_r", "knee": "knee_angle_r", "ankle": "ankle_angle_r"}


class Model:
    """One model: lengths of its actuators in a posture, with its coupled joints solved exactly."""

    def __init__(self, name: str, side: str = "_r", knee_sign: int = 1) -> None:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            self.model, self.data = myo_sim.load(name)
        self.side = side
        self.knee_sign = knee_sign
        self.index = {self.model.actuator(i).name: i for i in range(self.model.nu)}
        self.force = self.model.actuator_gainprm[:, 2]
        self.known: dict[tuple[tuple[str, float], ...], np.ndarray] = {}

    def lengths(self, **degrees: float) -> np.ndarray:
        """Lengths of all actuators, in cm, with joints of the model at these angles and the rest neutral."""
        key = tuple(sorted(degrees.items()))
        if key not in self.known:
            model, q = self.model, self.model.qpos0.copy()
            for joint, value in degrees.items():
                q[model.jnt_qposadr[model.joint(joint).id]] = np.radians(value)
            for i in range(model.neq):
                if model.eq_type[i] == mujoco.mjtEq.mjEQ_JOINT:
                    _couple(model, q, i)
            self.data.qpos[:] = q
            for step in (mujoco.mj_kinematics, mujoco.mj_comPos, mujoco.mj_tendon, mujoco.mj_transmission):
                step(model, self.data)
            self.known[key] = self.data.actuator_length[: model.nu] * 100
        return self.known[key]

    def posture(self, posture: dict[str, float]) -> dict[str, float]:
        """A posture of ours in the joints and signs of the model; a knee is bent to 120 at most, as in our table."""
        named = {JOINTS[j]: min(a, 120.0) if j == "knee" else a for j, a in posture.items() if j in JOINTS}
        named["knee_angle_r"] = self.knee_sign * named.get("knee_angle_r", 0.0)
        return named

    def mean(self, actuators: tuple[str, ...], values: np.ndarray) -> float:
        """The mean of some actuators' values, weighted by their greatest force."""
        at = [self.index[name + self.side] for name in actuators]
        return float(np.average(values[at], weights=self.force[at]))

    def length(self, actuators: tuple[str, ...], posture: dict[str, float]) -> float:
        return self.mean(actuators, self.lengths(**self.posture(posture)))

    def arm(self, actuators: tuple[str, ...], joint: str, **degrees: float) -> float:
        """Moment arm about a joint of the model, in cm: positive where the muscle raises the joint's angle."""
        step = 0.5
        here = degrees.get(joint, 0.0)
        less, more = (self.lengths(**{**degrees, joint: here + d}) for d in (-step, step))
        return -self.mean(actuators, more - less) / np.radians(2 * step)


def _couple(model: mujoco.MjModel, q: np.ndarray, i: int) -> None:
    """Sets a joint that follows another one by a polynomial."""
    to, by = model.eq_obj1id[i], model.eq_obj2id[i]
    x = 0.0 if by < 0 else q[model.jnt_qposadr[by]] - model.qpos0[model.jnt_qposadr[by]]
    q[model.jnt_qposadr[to]] = model.qpos0[model.jnt_qposadr[to]] + np.polyval(model.eq_data[i][:5][::-1], x)


@pytest.fixture(scope="session")
def legs() -> Model:
    """The leg model after Rajagopal and others 2016."""
    return Model("myolegs")


@pytest.fixture(scope="session")
def second_legs() -> Model:
    """The second, independent skeleton, after Delp and others 1990."""
    return Model("myolegs26", knee_sign=-1)


@pytest.fixture(scope="session")
def arm() -> Model:
    """An arm model, for signs and orderings only."""
    return Model("myoarm", side="")


@pytest.fixture(scope="session")
def torso() -> Model:
    """A torso with a constrained lumbar spine."""
    return Model("myotorso", side="")
