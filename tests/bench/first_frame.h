// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QGuiApplication>
#include <QQuickWindow>
#include <cstdio>
#include <fstream>
#include <string>

/// Of this program, in kB.
inline double resident_kilobytes() {
    std::ifstream status{"/proc/self/status"};
    for (std::string line; std::getline(status, line);) {
        if (line.rfind("VmRSS:", 0) == 0) {
            return std::stod(line.substr(6));
        }
    }
    return 0.0;
}

/// Prints the resident memory in kB and ends the program as soon as the window has shown its first frame.
inline void end_at_first_frame(QQuickWindow& window) {
    QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [] {
        std::printf("%.0f\n", resident_kilobytes());
        std::fflush(stdout);
        QGuiApplication::exit(0);
    });
}
