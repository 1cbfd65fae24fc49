// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The cautions of the step, where the work is.
ColumnLayout {
    id: list

    required property VisitViewModel visit

    spacing: Theme.gap
    visible: visit.cautions.length > 0

    Repeater {
        model: list.visit.cautions
        delegate: CautionBox {
            required property var modelData
            level: modelData.level
            message: modelData.text
            source: modelData.source
            Layout.fillWidth: true
        }
    }
    PlainWords {
        text: list.visit.codesComeFirst
        kind: "small"
        soft: true
        Layout.fillWidth: true
    }
}
