// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// Something for whoever wants it: a title and what is in it in a few words. Its content is made when it is opened.
ColumnLayout {
    id: fold

    required property string title
    property string summary
    property bool open: false
    // A component by itself: an item written in here would be there from the start.
    required property Component content

    spacing: Theme.gap

    // Opened at the lower edge of a page it would open out of sight: the page goes along while the content takes its place.
    onHeightChanged: if (unfolding.running)
        settled.restart()

    Timer {
        id: settled
        interval: 0
        onTriggered: {
            let around = fold.parent;
            while (around && !(around instanceof ScrollColumn))
                around = around.parent;
            if (around)
                (around as ScrollColumn).show(fold);
        }
    }
    Timer {
        id: unfolding
        interval: 200
    }

    TouchTarget {
        id: head
        text: fold.title
        horizontalPadding: Theme.gap
        Accessible.role: Accessible.Button
        Accessible.checkable: true
        Accessible.checked: fold.open
        Accessible.description: fold.open ? qsTr("open; %1").arg(fold.summary) : qsTr("folded; %1").arg(fold.summary)
        onClicked: {
            fold.open = !fold.open;
            if (fold.open)
                unfolding.restart();
        }
        Layout.fillWidth: true
        background: Rectangle {
            radius: Theme.radius
            color: head.down ? Theme.waterTint : Theme.ground
            border.width: Theme.border
            border.color: Theme.line
        }
        contentItem: RowLayout {
            spacing: Theme.gap
            Pictogram {
                name: "forward"
                size: Theme.pictogramSmall
                colour: Theme.water
                rotation: fold.open ? 90 : 0
            }
            PlainWords {
                text: fold.title
                color: Theme.ink
                Accessible.ignored: true
                Layout.fillWidth: true
            }
            PlainWords {
                visible: text.length > 0
                text: fold.summary
                kind: "small"
                color: Theme.inkSoft
                horizontalAlignment: Text.AlignRight
                Accessible.ignored: true
                Layout.maximumWidth: head.width * 0.4
            }
        }
    }
    Repeater {
        model: fold.open ? 1 : 0
        delegate: fold.content
    }
}
