// A symbol as the library spells it (`sigma_F`, `alpha_wt`) taken apart: letter and index, Greek as Greek.

const greek = new Map(
  Object.entries({
    alpha: 'α',
    beta: 'β',
    gamma: 'γ',
    delta: 'δ',
    eps: 'ε',
    epsilon: 'ε',
    zeta: 'ζ',
    eta: 'η',
    theta: 'θ',
    iota: 'ι',
    kappa: 'κ',
    lambda: 'λ',
    mu: 'μ',
    nu: 'ν',
    xi: 'ξ',
    pi: 'π',
    rho: 'ρ',
    sigma: 'σ',
    tau: 'τ',
    phi: 'φ',
    chi: 'χ',
    psi: 'ψ',
    omega: 'ω',
    Gamma: 'Γ',
    Delta: 'Δ',
    Theta: 'Θ',
    Lambda: 'Λ',
    Sigma: 'Σ',
    Phi: 'Φ',
    Psi: 'Ψ',
    Omega: 'Ω',
    dtheta: 'Δθ',
    inf: '∞',
  }),
);

export interface SymbolParts {
  readonly letter: string;
  /** Indices joined by commas; empty when there is none. */
  readonly index: string;
}

/** `sigma_F` → σ with index F; `Y_eps` → Y with index ε; `K_F_beta` → K with index F,β. */
export function symbolParts(name: string): SymbolParts {
  const [letter = name, ...indices] = name.split('_');
  return { letter: greek.get(letter) ?? letter, index: indices.map((i) => greek.get(i) ?? i).join(',') };
}
