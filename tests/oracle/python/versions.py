"""Which releases of the libraries answer."""

import json

import fluids
import scipy

print(json.dumps({"scipy": scipy.__version__, "fluids": fluids.__version__}))
