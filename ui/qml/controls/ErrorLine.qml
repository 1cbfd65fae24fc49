// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// What is wrong with the entry above, by sign and words. Gone while there is nothing to say.
RowLayout {
    id: line

    required property string text

    visible: text.length > 0
    spacing: Theme.gap

    Pictogram {
        name: "problem"
        size: Theme.pictogramSmall
        colour: Theme.warning
    }
    PlainWords {
        text: line.text
        color: Theme.warningInk
        Accessible.role: Accessible.AlertMessage
        Layout.fillWidth: true
    }
}
