// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace wetfront::ui {

/// The desktop program: reads the command line, opens the record file (or a throwaway copy of the demo),
/// shows the window. Returns the exit status: 0 done, 2 bad usage, 3 the record file could not be opened.
int run_desktop(int& argc, char** argv);

}  // namespace wetfront::ui
