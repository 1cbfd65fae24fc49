// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// The time that runs, since when, and that the tablet may fall asleep over it. Gone while there is nothing to say.
ColumnLayout {
    id: time

    required property string text
    required property string label
    required property string awakeProblem

    visible: text.length > 0 || label.length > 0 || awakeProblem.length > 0
    spacing: Theme.gap

    PlainWords {
        visible: text.length > 0
        text: time.text
        kind: "running"
        wrapMode: Text.NoWrap
        fontSizeMode: Text.Fit
        minimumPixelSize: Theme.fontDisplay
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
        Layout.maximumHeight: Theme.fontRunning * 1.2
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("elapsed %1").arg(text)
    }
    PlainWords {
        visible: text.length > 0
        text: time.label
        soft: true
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    PlainWords {
        visible: text.length > 0
        text: time.awakeProblem
        kind: "small"
        color: Theme.warningInk
        Layout.fillWidth: true
    }
}
