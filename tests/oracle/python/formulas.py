"""Friction, fittings and pressure by the fluids library: one list of numbers for each list of arguments given."""

import json
import sys
from math import pi

from fluids.core import K_from_f, K_from_L_equiv, Reynolds, head_from_K
from fluids.fittings import Cv_to_K, Hooper2K, Kv_to_K
from fluids.friction import Churchill_1977, Colebrook, friction_laminar


def head_loss(factor, flow, bore, roughness, length, viscosity):
    """Head lost in a pipe by the library's factor, coefficient and velocity head."""
    velocity = abs(flow) / (pi / 4 * bore**2)
    reynolds = Reynolds(V=velocity, D=bore, nu=viscosity)
    loss = head_from_K(K_from_f(factor(reynolds, roughness / bore), length, bore), velocity)
    return loss if flow >= 0 else -loss


def head_loss_hooper(flow, bore, k1, k_infinity, viscosity):
    velocity = flow / (pi / 4 * bore**2)
    reynolds = Reynolds(V=velocity, D=bore, nu=viscosity)
    return head_from_K(Hooper2K(bore / 0.0254, reynolds, K1=k1, Kinfty=k_infinity), velocity)


ANSWERS = {
    "churchill": Churchill_1977,
    "colebrook": Colebrook,
    "laminar": friction_laminar,
    "headLossChurchill": lambda *pipe: head_loss(Churchill_1977, *pipe),
    "headLossLaminar": lambda *pipe: head_loss(lambda reynolds, _: friction_laminar(reynolds), *pipe),
    "hooper": lambda bore, reynolds, k1, k_infinity: Hooper2K(bore / 0.0254, reynolds, K1=k1, Kinfty=k_infinity),
    "headLossHooper": head_loss_hooper,
    "kv": Kv_to_K,
    "cv": Cv_to_K,
    "equivalentLength": lambda length, bore, factor: K_from_L_equiv(length / bore, factor),
    "headOfCoefficient": head_from_K,
    "reynolds": lambda velocity, bore, viscosity: Reynolds(V=velocity, D=bore, nu=viscosity),
}

question = json.load(sys.stdin)
print(json.dumps({name: [ANSWERS[name](*one) for one in arguments] for name, arguments in question.items()}))
