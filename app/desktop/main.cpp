// SPDX-License-Identifier: Apache-2.0
#include "desktop/desktop.h"

int main(int argc, char** argv) {
    return wetfront::ui::run_desktop(argc, argv);
}
