// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/media.h"

#include <QStorageInfo>

namespace wetfront::ui {

QStringList plugged_in_media() {
    QStringList folders;
    for (const auto& volume : QStorageInfo::mountedVolumes()) {
        const QString root = volume.rootPath();
        const bool plugged_in =
            root.startsWith(QStringLiteral("/media/")) || root.startsWith(QStringLiteral("/run/media/"));
        if (plugged_in && volume.isReady()) {
            folders.append(root);
        }
    }
    return folders;
}

}  // namespace wetfront::ui
