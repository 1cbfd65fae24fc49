// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme

// Does its thing when one finger stays on it until the bar is full: no drop and no brush of a sleeve does it.
Item {
    id: button

    required property string text
    property int holdMs: 1500
    property real progress: 0

    signal held

    property bool done: false
    function follow(onIt: bool): void {
        if (!onIt) {
            filling.stop();
            progress = 0;
            done = false;
        } else if (!filling.running && !done) {
            filling.restart();
        }
    }

    implicitWidth: label.implicitWidth + 2 * Theme.space
    implicitHeight: Theme.target

    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.onPressAction: held()

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: Theme.surface
        border.width: Theme.border
        border.color: Theme.water
        Rectangle {
            x: Theme.border
            y: Theme.border
            width: (parent.width - 2 * Theme.border) * button.progress
            height: parent.height - 2 * Theme.border
            radius: Theme.radius
            color: Theme.waterTint
        }
    }
    PlainWords {
        id: label
        anchors.centerIn: parent
        text: button.text
        color: Theme.water
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    NumberAnimation {
        id: filling
        target: button
        property: "progress"
        from: 0
        to: 1
        duration: button.holdMs
        onFinished: {
            button.done = true;
            button.progress = 0;
            button.held();
        }
    }
    MultiPointTouchArea {
        anchors.fill: parent
        onTouchUpdated: points => button.follow(points.length === 1 && contains(Qt.point(points[0].x, points[0].y)))
        onCanceled: button.follow(false)
    }
}
